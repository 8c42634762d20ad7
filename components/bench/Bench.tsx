'use client'

import dynamic from 'next/dynamic'
import { useCallback, useEffect, useMemo, useRef, useState, useSyncExternalStore } from 'react'
import type { FootageController } from '@/components/footage/types'
import type { SheetActions } from '@/components/sheet/actions'
import { Sheet } from '@/components/sheet/Sheet'
import { toSheet } from '@/lib/procedure/sheet'
import { readQuantities } from '@/lib/quantity/read'
import type { Finding } from '@/lib/review/rule'
import type { WordRange } from '@/lib/transcript/talk'
import styles from './bench.module.css'
import { FootagePane } from './FootagePane'
import { KeysDialog } from './KeysDialog'
import { benchStore } from './laying'
import { createPlayhead } from './playhead'
import { fileNameOf, saveFile } from './saving'
import type { Session } from './session'
import { TalkSurface } from './TalkSurface'
import { type Surface, ThumbBar } from './ThumbBar'
import { TopBar } from './TopBar'
import { useCommands } from './useCommands'
import { useDrafting } from './useDrafting'
import { useFindings } from './useFindings'
import { useFootage } from './useFootage'
import { useListening } from './useListening'
import { useSingleKeys } from './useSingleKeys'
import { useTalk } from './useTalk'

const ReadBackDialog = dynamic(() => import('./ReadBackDialog').then(({ ReadBackDialog: dialog }) => dialog))
const TimesDialog = dynamic(() => import('./TimesDialog').then(({ TimesDialog: dialog }) => dialog))
const PublishDialog = dynamic(() => import('./PublishDialog').then(({ PublishDialog: dialog }) => dialog))

type Props = {
  readonly id: string
  readonly session: Session
  /** Another tab has this recording open: nothing done here is saved. */
  readonly isOpenElsewhere: boolean
  /** What was found when the files were read. */
  readonly notices: readonly string[]
}

const SURFACES: readonly Surface[] = ['talk', 'footage', 'sheet']

/** One recording in work: the talk, the footage and the sheet. */
export const Bench = ({ id, session, isOpenElsewhere, notices }: Props) => {
  const state = useSyncExternalStore(session.subscribe, session.get, session.get)
  const project = state.history.present
  const { transcript } = project.recording
  const [chosen, setChosen] = useState<string>()
  const [chosenFinding, setChosenFinding] = useState<Finding>()
  const [words, setWords] = useState<WordRange>()
  const [surface, setSurface] = useState<Surface>('talk')
  const [isReading, setReading] = useState(false)
  const [dialog, setDialog] = useState<'keys' | 'publish' | 'read-back' | 'times'>()
  const [notice, setNotice] = useState(notices.join(' '))
  const [areSingleKeysOn, setSingleKeys] = useSingleKeys()
  const playhead = useMemo(createPlayhead, [])
  const controller = useRef<FootageController>(null)

  const { talk, isSet } = useTalk(transcript)
  const sheet = useMemo(() => toSheet(project), [project])
  const reviewed = useFindings(project)
  const { findings } = reviewed
  const { perform } = session
  const found = useFootage(id, project.recording.footage, footage => perform({ do: 'set-footage', footage }))
  const opened = found.state.is === 'open' ? found.state.opened : undefined
  const listening = useListening(opened, project.recording.footage?.fingerprint)

  const seek = useCallback(
    (seconds: number) => {
      if (controller.current === null) playhead.set(seconds)
      else controller.current.seek(seconds)
    },
    [playhead],
  )
  const choose = useCallback((next: string | undefined) => {
    setChosen(next)
    if (next !== undefined) setWords(undefined)
  }, [])
  const openedNow = useRef(opened)
  openedNow.current = opened
  const actions = useMemo<SheetActions>(
    () => ({
      perform,
      choose,
      playSpan: span => {
        if (controller.current === null) playhead.set(span.start)
        else controller.current.playSpan(span)
      },
      now: playhead.get,
      footage: () => openedNow.current,
      stills: {
        get: async mark => (await benchStore().stillsOf(id)).get(mark),
        put: (mark, picture) => benchStore().keepStill(id, mark, picture),
      },
    }),
    [perform, choose, playhead, id],
  )
  const drafting = useDrafting(transcript, marks => {
    perform({ do: 'redraft', marks })
    setNotice(`${marks.length} marks are pencilled. Keep, change or drop each one: N goes through them.`)
  })

  const saveProject = async () => {
    const { formatProject } = await import('@/lib/procedure/project-file')
    await saveFile(`${fileNameOf(project.procedure.title)}.tellwright.json`, formatProject(project), 'application/json')
  }
  const chooseFinding = (finding: Finding | undefined) => {
    setChosenFinding(finding)
    if (finding?.place.at === 'mark') choose(finding.place.mark)
    if (finding?.place.at === 'talk') seek(finding.place.start)
    if (finding !== undefined && finding.place.at !== 'talk') setSurface('sheet')
  }
  const nextSurface = () => {
    const next = SURFACES[(SURFACES.indexOf(surface) + 1) % SURFACES.length] ?? 'talk'
    setSurface(next)
    const target = document.querySelector<HTMLElement>(
      `[data-surface-name="${next}"] [tabindex="0"], [data-surface-name="${next}"] button`,
    )
    target?.focus()
  }
  const command = useCommands(
    {
      session,
      project,
      talk,
      findings,
      chosen,
      chosenFinding,
      words,
      playhead,
      controller,
      choose,
      chooseFinding,
      setWords,
      tell: setNotice,
      saveFile: () => void saveProject(),
      nextSurface,
      showKeys: () => setDialog('keys'),
    },
    areSingleKeysOn,
  )
  // The grammar of quantities builds its tables when first used: once now, when nobody waits for it.
  useEffect(() => {
    const warm = setTimeout(() => readQuantities('12 mm'), 800)
    return () => clearTimeout(warm)
  }, [])
  useEffect(() => {
    document.title = `${project.procedure.title || 'Recording'} · Tellwright`
  }, [project.procedure.title])

  return (
    <div className={styles.bench} data-reading={isReading} data-surface={surface}>
      <TopBar
        title={project.procedure.title}
        session={session}
        state={state}
        findings={findings}
        isReading={isReading}
        isOpenElsewhere={isOpenElsewhere}
        onReading={() => setReading(!isReading)}
        onPublish={() => setDialog('publish')}
        onSaveFile={() => void saveProject()}
        onKeys={() => setDialog('keys')}
        onNextFinding={() => command({ do: 'next-finding', by: 1 })}
      />
      <main className={styles.surfaces}>
        <section className={styles.talkPlace} data-surface-name="talk" aria-label="Talk">
          <TalkSurface
            project={project}
            talk={talk}
            isSet={isSet}
            reviewed={reviewed}
            chosen={chosen}
            words={words}
            playhead={playhead}
            drafting={drafting}
            onPerform={perform}
            onChoose={choose}
            onFinding={chooseFinding}
            onWords={setWords}
            onKind={kind => command({ do: 'kind', kind })}
            onSeek={seek}
            onNotice={setNotice}
            onTimes={() => setDialog('times')}
          />
        </section>
        <section className={styles.footagePlace} data-surface-name="footage" aria-label="Footage">
          <FootagePane
            found={found}
            listening={listening}
            project={project}
            sheet={sheet}
            chosen={chosen}
            playhead={playhead}
            controller={controller}
            onPerform={perform}
            onChoose={choose}
          />
        </section>
        <section className={styles.sheetPlace} data-surface-name="sheet" aria-label="Sheet">
          <Sheet sheet={sheet} findings={findings} chosen={chosen} chosenFinding={chosenFinding} actions={actions} />
        </section>
      </main>
      <ThumbBar surface={surface} onSurface={setSurface} />
      <p className={styles.notice} role="status">
        {notice}
      </p>
      {dialog === 'keys' && (
        <KeysDialog
          areSingleKeysOn={areSingleKeysOn}
          onSingleKeys={setSingleKeys}
          onClose={() => setDialog(undefined)}
        />
      )}
      {dialog === 'publish' && (
        <PublishDialog
          project={project}
          findings={findings}
          stillsOf={() => benchStore().stillsOf(id)}
          onPerform={perform}
          onReadBack={() => setDialog('read-back')}
          onClose={() => setDialog(undefined)}
        />
      )}
      {dialog === 'times' && (
        <TimesDialog
          project={project}
          opened={opened}
          listening={listening}
          now={playhead.get()}
          onPerform={perform}
          onClose={() => setDialog(undefined)}
        />
      )}
      {dialog === 'read-back' && (
        <ReadBackDialog project={project} onPerform={perform} onClose={() => setDialog(undefined)} />
      )}
    </div>
  )
}
