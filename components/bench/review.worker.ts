import type { Project } from '@/lib/procedure/project'
import type { Transcript } from '@/lib/procedure/recording'
import { type Coverage, coverageOf } from '@/lib/review/coverage'
import { reviewProject } from '@/lib/review/review'
import type { Finding } from '@/lib/review/rule'
import type { ShopRules } from '@/lib/review/shop'

/** What the page sends: the project without its transcript, and the transcript only when it changed. */
export type ToReviewer = {
  readonly project: Project
  readonly transcript?: Transcript | null
  /** The shop's own rules; absent: as before. */
  readonly rules?: ShopRules
}

/** What comes back. */
export type FromReviewer = { readonly findings: readonly Finding[]; readonly coverage: Coverage }

let transcript: Transcript | null = null
let rules: ShopRules | undefined

/** Reviews off the main thread, so that typing and marking never wait for the rules. */
self.onmessage = ({ data }: MessageEvent<ToReviewer>) => {
  if (data.transcript !== undefined) transcript = data.transcript
  if (data.rules !== undefined) rules = data.rules
  const project = { ...data.project, recording: { ...data.project.recording, transcript } }
  self.postMessage({
    findings: reviewProject(project, rules === undefined ? {} : { rules }),
    coverage: coverageOf(project),
  } satisfies FromReviewer)
}
