import { bicycle } from './bicycle'
import { brakes } from './brakes'
import { cabinet } from './cabinet'
import { fan } from './fan'
import { fork } from './fork'
import { furnace } from './furnace'
import { laptop } from './laptop'
import { lathe } from './lathe'
import { mower } from './mower'
import type { Sound } from './notation'
import { press } from './press'
import { splitter } from './splitter'
import { toilet } from './toilet'
import { washer } from './washer'

/** Procedures of thirteen trades with nothing wrong in them. */
export const SOUND: readonly Sound[] = [
  lathe,
  washer,
  brakes,
  fan,
  bicycle,
  mower,
  cabinet,
  splitter,
  toilet,
  laptop,
  fork,
  furnace,
  press,
]
