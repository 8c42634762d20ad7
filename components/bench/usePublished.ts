import { useEffect, useState } from 'react'
import type { Project } from '@/lib/procedure/project'
import type { PublicationName, PublishOptions } from '@/lib/publish/publication'
import type { FromPublisher, ToPublisher } from './publish.worker'

/**
 * A publication, written in a worker; another choice ends the one being written.
 *
 * @param isWaiting something it needs is still being made
 * @returns undefined while it is written
 */
export const usePublished = (
  name: PublicationName,
  project: Project,
  options: PublishOptions,
  isWaiting: boolean,
): FromPublisher | undefined => {
  const [made, setMade] = useState<FromPublisher>()
  useEffect(() => {
    setMade(undefined)
    if (isWaiting) return
    const worker = new Worker(new URL('./publish.worker.ts', import.meta.url), { type: 'module' })
    worker.onmessage = ({ data }: MessageEvent<FromPublisher>) => {
      setMade(data)
      worker.terminate()
    }
    worker.onerror = ({ message }) => setMade({ files: [], problem: `It could not be written: ${message}` })
    worker.postMessage({ name, project, options } satisfies ToPublisher)
    return () => worker.terminate()
  }, [name, project, options, isWaiting])
  return made
}
