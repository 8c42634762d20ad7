import { readMovie } from './movie'
import type { PacketPlaces } from './packet-reader'
import { movieBox, readSampleTable } from './sample-table'

/**
 * Where the packets of a sound track stand, by the index of an MP4, M4A or MOV.
 *
 * @param track its number in the file
 * @param first when its first packet plays, seconds: what the file's edit list makes of it
 * @returns undefined where the index is of another kind (fragments, several sorts of packets) or places are not in order
 */
export const soundPlaces = async (file: Blob, track: number, first: number): Promise<PacketPlaces | undefined> => {
  const bytes = await movieBox(file)
  if (bytes === undefined) return undefined
  try {
    const own = readMovie(bytes)?.tracks.find(({ id }) => id === track)
    const table = own && readSampleTable(bytes, own)
    if (table === undefined || table.delays !== undefined) return undefined
    const { offsets, sizes, starts, clock } = table
    const isInOrder = offsets.every((offset, i) => i === 0 || offset >= (offsets[i - 1] ?? 0) + (sizes[i - 1] ?? 0))
    return isInOrder ? { offsets, sizes, times: starts.map(ticks => first + ticks / clock) } : undefined
  } catch (error) {
    if (error instanceof RangeError) return undefined
    throw error
  }
}
