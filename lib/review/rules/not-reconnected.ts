import type { Rule } from '../rule'
import { sample } from '../sample'
import { unrestored } from '../unrestored'

/** What was disconnected is connected. */
export const notReconnected: Rule = {
  id: 'not-reconnected',
  level: 'stop',
  about: 'A lead, hose or connector is taken off and never put back on.',
  why: 'A loose lead sparks, a loose hose sprays, and neither shows until the machine runs.',
  source: 'IEC/IEEE 82079-1:2019 on completeness (from memory); common practice, no source',
  trips: sample([
    ['step', 'Disconnect the fuel hose'],
    ['step', 'Replace the pump'],
    ['step', 'Start the engine'],
  ]),
  passes: sample([
    ['step', 'Unplug the sensor lead'],
    ['step', 'Replace the sensor'],
    ['step', 'Plug the sensor lead back in'],
    ['step', 'Start the engine'],
  ]),
  check: unrestored({ undone: 'disconnected', was: 'disconnected', never: 'reconnected', step: 'Reconnect {}' }),
}
