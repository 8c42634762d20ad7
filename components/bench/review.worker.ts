import { coverageOf } from '@/lib/review/coverage'
import { reviewProject } from '@/lib/review/review'
import type { ShopRules } from '@/lib/review/shop'
import { openFindingsTeller, openProjectListener, type ToReviewer } from './reviewing'

const hear = openProjectListener()
const tell = openFindingsTeller()
let rules: ShopRules | undefined

/** Reviews off the main thread, so that typing and marking never wait for the rules. */
self.onmessage = ({ data }: MessageEvent<ToReviewer>) => {
  if (data.rules !== undefined) rules = data.rules
  const project = hear(data)
  const findings = reviewProject(project, rules === undefined ? {} : { rules })
  self.postMessage(tell({ findings, coverage: coverageOf(project) }))
}
