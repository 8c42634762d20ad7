import type { Project } from '@/lib/procedure/project'
import type { Sentence } from '@/lib/procedure/recording'

/** How values are written: as they were said, in SI-based metric units, in US customary units, or the first with the other in brackets. */
export const UNIT_CHOICES = ['as-said', 'metric', 'us', 'both'] as const
export type UnitChoice = (typeof UNIT_CHOICES)[number]

/** A finding as publications show it: plain data, handed in by whoever composes review and publish. */
export type PublishedFinding = {
  readonly level: 'stop' | 'fix' | 'consider'
  readonly message: string
  /** Where it lies in words, such as `step 4`. */
  readonly where?: string
  /** Reason of the waiver, where the user let it stand. */
  readonly waived?: string
}

/** What the person who publishes may choose. Everything has a default. */
export type PublishOptions = {
  /** Address or path of the footage, put before `#t=`; default: the footage's file name. */
  readonly footageAddress?: string
  /** Default `as-said`. */
  readonly units?: UnitChoice
  /** Whether marks nobody has kept yet are included (each flagged; the default) or left out. */
  readonly pencilled?: 'include' | 'leave-out'
  /** Findings of a review. Those of level `stop` that are not waived are said at the head. */
  readonly findings?: readonly PublishedFinding[]
  /** Whether all findings and waivers are listed at the end. Default false. */
  readonly listFindings?: boolean
  /** Pictures by the id of the mark they belong to: JPEG, PNG or WebP. */
  readonly stills?: ReadonlyMap<string, Uint8Array>
  /** Clips of footage by the id of the mark, for the packet: what lib/footage/clip.ts cuts. */
  readonly clips?: ReadonlyMap<string, Uint8Array>
  /** Faces to embed in the handout (WOFF2), by weight; default: what the reader's machine has. */
  readonly fonts?: ReadonlyMap<'text-400' | 'text-700' | 'figures-400', Uint8Array>
  /** Paper of the handout; default: what the printer has. A PDF needs one. */
  readonly paper?: 'a4' | 'letter'
  readonly notes?: NotesLimits
  readonly captions?: CaptionLimits
  /** What was said, reflowed by lib/transcript; without it captions are made from the cues as they stand. */
  readonly sentences?: readonly Sentence[]
}

/** Limits of the show notes. */
export type NotesLimits = {
  /** Shortest chapter, seconds; shorter ones join the one before. */
  readonly leastChapter?: number
  /** Longest notes, characters. */
  readonly most?: number
}

/** Limits of captions. */
export type CaptionLimits = {
  /** Characters a line. */
  readonly columns?: number
  readonly lines?: number
  /** Characters a second. */
  readonly speed?: number
  /** Seconds. */
  readonly least?: number
  /** Seconds. */
  readonly longest?: number
}

/** One file of a publication. */
export type PublishedFile = {
  /** Relative, with `/` between folders; never absolute and never with `..`. */
  readonly path: string
  /** Media type, such as `text/markdown`. */
  readonly type: string
  readonly content: string | Uint8Array
  /** What the person should know about this file: a limit that was exceeded, something left out. */
  readonly notices?: readonly string[]
}

export const PUBLICATION_NAMES = [
  'sheet',
  'handout',
  'notes',
  'captions',
  'chapters',
  'page',
  'task',
  'packet',
] as const
export type PublicationName = (typeof PUBLICATION_NAMES)[number]

/** Choices of the person who publishes that some publications heed and others don't. */
export const CHOICES = ['units', 'footageAddress', 'pencilled', 'listFindings', 'leastChapter'] as const
export type PublishChoice = (typeof CHOICES)[number]

/** What a project is exported as. */
export type Publication = {
  readonly name: PublicationName
  /** One sentence: what it is and for whom. */
  readonly about: string
  /** The choices that can change its files; the others are not offered for it. */
  readonly heeds: readonly PublishChoice[]
  /**
   * Pure but for time to compute: the same project and options give the same bytes.
   *
   * @returns at least one file; `captions` gives none where there is no transcript with times
   */
  readonly files: (project: Project, options: PublishOptions) => Promise<readonly PublishedFile[]>
}
