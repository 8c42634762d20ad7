import type { Project } from '@/lib/procedure/project'
import type { PublicationName, PublishedFile, PublishOptions } from '@/lib/publish/publication'
import { publicationOf } from '@/lib/publish/publications'

/** What the page sends. */
export type ToPublisher = {
  readonly name: PublicationName
  readonly project: Project
  readonly options: PublishOptions
}

/** What comes back: the files, none where it failed. */
export type FromPublisher = { readonly files: readonly PublishedFile[]; readonly problem?: string }

/** Writes off the main thread, so that the dialog of a talk of hours opens at once. */
self.onmessage = async ({ data: { name, project, options } }: MessageEvent<ToPublisher>) => {
  try {
    self.postMessage({ files: (await publicationOf(name)?.files(project, options)) ?? [] } satisfies FromPublisher)
  } catch (error) {
    const problem = error instanceof Error ? error.message : String(error)
    self.postMessage({ files: [], problem } satisfies FromPublisher)
  }
}
