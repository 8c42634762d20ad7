import type { Edit } from '@/lib/procedure/edit'
import type { Finding, FindingPlace } from './rule'

/** What a waiver stores in its `mark` field for a place: the mark's id, a list, a moment of the talk, or nothing. */
export const waiverKey = (place: FindingPlace): string | undefined => {
  switch (place.at) {
    case 'mark':
      return place.mark
    case 'list':
      return `list:${place.kind}`
    case 'talk':
      return `talk:${place.start}`
    case 'whole':
      return undefined
  }
}

/** @returns the edit that lets a finding stand for a reason, kept in the project and printed with the sheet. */
export const waiverFor = (finding: Finding, reason: string): Edit => {
  const mark = waiverKey(finding.place)
  return { do: 'waive', rule: finding.rule, reason, ...(mark === undefined ? {} : { mark }) }
}

/** @returns the edit that raises a waived finding again. */
export const raiseAgain = (finding: Finding): Edit => {
  const mark = waiverKey(finding.place)
  return { do: 'unwaive', rule: finding.rule, ...(mark === undefined ? {} : { mark }) }
}
