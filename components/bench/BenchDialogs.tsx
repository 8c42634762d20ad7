'use client'

import dynamic from 'next/dynamic'
import { useState } from 'react'
import type { OpenFootage } from '@/lib/footage/open'
import type { Edit } from '@/lib/procedure/edit'
import type { Project } from '@/lib/procedure/project'
import type { Transcript } from '@/lib/procedure/recording'
import type { Finding } from '@/lib/review/rule'
import { KeysDialog } from './KeysDialog'
import { benchStore } from './laying'
import { PLAIN_OUTPUT } from './OutputChoices'
import type { Listening } from './useListening'

const ReadBackDialog = dynamic(() => import('./ReadBackDialog').then(({ ReadBackDialog: dialog }) => dialog))
const SinceDialog = dynamic(() => import('./SinceDialog').then(({ SinceDialog: dialog }) => dialog))
const TimesDialog = dynamic(() => import('./TimesDialog').then(({ TimesDialog: dialog }) => dialog))
const PublishDialog = dynamic(() => import('./PublishDialog').then(({ PublishDialog: dialog }) => dialog))

export type DialogName = 'keys' | 'publish' | 'read-back' | 'since' | 'times'

type Props = {
  /** The dialog that is open; one at a time. */
  readonly open: DialogName | undefined
  /** Id of the recording. */
  readonly id: string
  readonly project: Project
  readonly findings: readonly Finding[]
  readonly opened: OpenFootage | undefined
  readonly listening: Listening
  /** Moment the footage shows, seconds. */
  readonly now: number
  readonly areSingleKeysOn: boolean
  readonly onSingleKeys: (on: boolean) => void
  readonly onPerform: (...edits: Edit[]) => void
  readonly onFinding: (finding: Finding | undefined) => void
  readonly onTranscript: (transcript: Transcript, ...words: readonly string[]) => void
  readonly onOpen: (name: DialogName | undefined) => void
}

/** The dialog over the bench, if one is open. */
export const BenchDialogs = (props: Props) => {
  const { open, id, project, findings, opened, listening, onPerform, onOpen } = props
  // Kept while the recording is on the bench: what is published twice is published alike.
  const [output, setOutput] = useState(PLAIN_OUTPUT)
  const [address, setAddress] = useState('')
  const onClose = () => onOpen(undefined)
  switch (open) {
    case 'keys':
      return <KeysDialog areSingleKeysOn={props.areSingleKeysOn} onSingleKeys={props.onSingleKeys} onClose={onClose} />
    case 'publish':
      return (
        <PublishDialog
          project={project}
          findings={findings}
          opened={opened}
          stillsOf={() => benchStore().stillsOf(id)}
          output={output}
          onOutput={to => setOutput(before => ({ ...before, ...to }))}
          address={address}
          onAddress={setAddress}
          onPerform={onPerform}
          onFinding={props.onFinding}
          onReadBack={() => onOpen('read-back')}
          onSince={() => onOpen('since')}
          onClose={onClose}
        />
      )
    case 'times':
      return (
        <TimesDialog
          project={project}
          opened={opened}
          listening={listening}
          now={props.now}
          onPerform={onPerform}
          onTranscript={props.onTranscript}
          onClose={onClose}
        />
      )
    case 'since':
      return <SinceDialog project={project} onClose={onClose} />
    case 'read-back':
      return <ReadBackDialog project={project} onPerform={onPerform} onClose={onClose} />
    case undefined:
      return null
  }
}
