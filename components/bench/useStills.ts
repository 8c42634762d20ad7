import { useEffect, useState } from 'react'
import type { Project } from '@/lib/procedure/project'

/** The pictures of a project's steps as bytes, for publishing; undefined until they are read, or where there are none. */
export const useStills = (
  project: Project,
  stillsOf: () => Promise<ReadonlyMap<string, Blob>>,
): ReadonlyMap<string, Uint8Array> | undefined => {
  const [stills, setStills] = useState<ReadonlyMap<string, Uint8Array>>()
  const wanted = project.marks.filter(mark => mark.still !== undefined).map(mark => mark.id)
  const key = wanted.join(' ')
  // biome-ignore lint/correctness/useExhaustiveDependencies: read again only when other marks have stills
  useEffect(() => {
    let isOver = false
    if (wanted.length === 0) return setStills(undefined)
    const read = async () => {
      const all = await stillsOf()
      const bytes = await Promise.all(
        wanted.map(async mark => {
          const picture = all.get(mark)
          return picture === undefined ? [] : [[mark, new Uint8Array(await picture.arrayBuffer())] as const]
        }),
      )
      if (!isOver) setStills(new Map(bytes.flat()))
    }
    read().catch(() => {
      if (!isOver) setStills(undefined)
    })
    return () => {
      isOver = true
    }
  }, [key])
  return stills
}
