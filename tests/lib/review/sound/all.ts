import { bicycle } from './bicycle'
import { brakes } from './brakes'
import { cabinet } from './cabinet'
import { fan } from './fan'
import { lathe } from './lathe'
import { mower } from './mower'
import type { Sound } from './notation'
import { splitter } from './splitter'
import { washer } from './washer'

/** Procedures of eight trades with nothing wrong in them. */
export const SOUND: readonly Sound[] = [lathe, washer, brakes, fan, bicycle, mower, cabinet, splitter]
