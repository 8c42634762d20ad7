import { useEffect, useState } from 'react'
import type { Project } from '@/lib/procedure/project'
import type { PublicationName, PublishedFile, PublishOptions } from '@/lib/publish/publication'
import { publicationOf } from '@/lib/publish/publications'

/** The files, none where it failed, and then why. */
type Published = { readonly files: readonly PublishedFile[]; readonly problem?: string }

/**
 * A publication, written once the page has shown that it is being written: that of a talk of hours takes seconds.
 *
 * @param isWaiting something it needs is still being made
 * @returns undefined while it is written
 */
export const usePublished = (
  name: PublicationName,
  project: Project,
  options: PublishOptions,
  isWaiting: boolean,
): Published | undefined => {
  const [made, setMade] = useState<Published>()
  useEffect(() => {
    let isOver = false
    setMade(undefined)
    if (isWaiting) return
    const write = async () => {
      try {
        const files = (await publicationOf(name)?.files(project, options)) ?? []
        if (!isOver) setMade({ files })
      } catch (error) {
        if (!isOver) setMade({ files: [], problem: error instanceof Error ? error.message : String(error) })
      }
    }
    const shown = setTimeout(() => void write(), 30)
    return () => {
      isOver = true
      clearTimeout(shown)
    }
  }, [name, project, options, isWaiting])
  return made
}
