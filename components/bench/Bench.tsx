'use client'

import { useCallback, useEffect, useMemo, useRef, useState, useSyncExternalStore } from 'react'
import type { FootageController } from '@/components/footage/types'
import { Sheet } from '@/components/sheet/Sheet'
import { TypingContext, untaken } from '@/components/ui/typing'
import { countOf } from '@/lib/procedure/count'
import { toSheet } from '@/lib/procedure/sheet'
import { readQuantities } from '@/lib/quantity/read'
import type { Finding } from '@/lib/review/rule'
import { BenchDialogs, type DialogName } from './BenchDialogs'
import styles from './bench.module.css'
import { FootagePane } from './FootagePane'
import { lengthsDoubt } from './lengths'
import { createPlayhead } from './playhead'
import { fileNameOf, saveFile } from './saving'
import type { Session } from './session'
import { TalkSurface } from './TalkSurface'
import { ThumbBar } from './ThumbBar'
import { TopBar } from './TopBar'
import { useChoice } from './useChoice'
import { useCommands } from './useCommands'
import { useDrafting } from './useDrafting'
import { isReviewed, useFindings } from './useFindings'
import { useFootage } from './useFootage'
import { useListening } from './useListening'
import { useNotice } from './useNotice'
import { useReceiving } from './useReceiving'
import { useSheetActions } from './useSheetActions'
import { useSingleKeys } from './useSingleKeys'
import { useSurface } from './useSurface'
import { useTalk } from './useTalk'

type Props = {
  readonly id: string
  readonly session: Session
  /** Another tab has this recording open: nothing done here is saved. */
  readonly isOpenElsewhere: boolean
  /** What was found when the files were read. */
  readonly notices: readonly string[]
}

const SETTLED = 'Nothing new was found: what this talk gives is kept or dropped already.'

const draftedWords = (count: number, doubt: string | undefined): string => {
  if (doubt !== undefined) return count === 0 ? doubt : `${doubt} Read with doubt what is pencilled.`
  if (count === 0) return 'Nothing in this talk reads like a step, a limit or a thing to have at hand: mark it by hand.'
  return `${countOf(count, 'mark is', 'marks are')} pencilled. Keep, change or drop each one: N goes through them.`
}

/** One recording in work: the talk, the footage and the sheet. */
export const Bench = ({ id, session, isOpenElsewhere, notices }: Props) => {
  const projectOf = () => session.get().history.present
  const project = useSyncExternalStore(session.subscribe, projectOf, projectOf)
  const { transcript, footage } = project.recording
  const { perform } = session
  const [dialog, setDialog] = useState<DialogName>()
  const [areSingleKeysOn, setSingleKeys] = useSingleKeys()
  const playhead = useMemo(createPlayhead, [])
  const controller = useRef<FootageController>(null)

  const { talk, isSet } = useTalk(transcript)
  const sheet = useMemo(() => toSheet(project), [project])
  const reviewed = useFindings(project)
  const { findings } = reviewed
  const choice = useChoice(transcript, project.marks, findings)
  const { chosen, choose, chosenFinding, words, setWords } = choice
  const { notice, tell } = useNotice(session, notices.join(' '), choose)
  const { surface, show, isReading, setReading, nextSurface } = useSurface()
  const found = useFootage(id, footage, taken => {
    perform({ do: 'set-footage', footage: taken })
    const doubt = lengthsDoubt(session.get().history.present.recording)
    if (doubt !== undefined) tell(doubt)
  })
  const { takeTranscript } = useReceiving({ session, found, tell })
  const opened = found.state.is === 'open' ? found.state.opened : undefined
  const listening = useListening(opened, footage?.fingerprint)
  const drafting = useDrafting(transcript, (marks, doubt) => {
    perform({ do: 'redraft', marks })
    // Not counted: what was kept or dropped before, which is not drafted a second time.
    const now = session.get().history.present.marks.filter(mark => mark.pencilled !== undefined).length
    tell(now === 0 && marks.length > 0 ? SETTLED : draftedWords(now, doubt))
  })

  const seek = useCallback(
    (seconds: number) => {
      if (controller.current === null) playhead.set(seconds)
      else controller.current.seek(seconds)
    },
    [playhead],
  )
  const saveProject = async () => {
    const { formatProject } = await import('@/lib/procedure/project-file')
    untaken.takeAll()
    const { present } = session.get().history
    const name = `${fileNameOf(present.procedure.title)}.tellwright.json`
    if (await saveFile(name, formatProject(present), 'application/json')) tell(`Saved as ${name}.`)
  }
  const chooseFinding = (finding: Finding | undefined) => {
    choice.pickFinding(finding)
    if (finding?.place.at === 'mark') choose(finding.place.mark)
    if (finding?.place.at === 'talk') seek(finding.place.start)
    if (finding !== undefined) show(finding.place.at === 'talk' ? 'talk' : 'sheet')
  }
  const command = useCommands(
    {
      session,
      project,
      talk,
      findings,
      isReviewed: isReviewed(reviewed),
      chosen,
      chosenFinding,
      findingAt: choice.findingAt,
      words,
      playhead,
      controller,
      choose,
      chooseFinding,
      setWords,
      tell,
      saveFile: () => void saveProject(),
      show,
      nextSurface,
      showKeys: () => setDialog('keys'),
    },
    areSingleKeysOn,
  )
  const drop = useCallback((mark: string) => command({ do: 'drop' }, mark), [command])
  const actions = useSheetActions({ id, perform, choose, drop, playhead, controller, opened })
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
        findings={isReviewed(reviewed) ? findings : undefined}
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
            onNotice={tell}
            onTimes={() => setDialog('times')}
            onTranscript={takeTranscript}
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
          <TypingContext value={session.during}>
            <Sheet sheet={sheet} findings={findings} chosen={chosen} chosenFinding={chosenFinding} actions={actions} />
          </TypingContext>
        </section>
      </main>
      <ThumbBar surface={surface} onSurface={show} />
      <p className={styles.notice} role="status">
        <span key={notice.number}>
          {notice.text}
          {notice.aside !== '' && <span className="apart">: {notice.aside}</span>}
        </span>
      </p>
      <BenchDialogs
        open={dialog}
        id={id}
        project={project}
        findings={findings}
        opened={opened}
        listening={listening}
        now={playhead.get()}
        areSingleKeysOn={areSingleKeysOn}
        onSingleKeys={setSingleKeys}
        onPerform={perform}
        onFinding={chooseFinding}
        onTranscript={takeTranscript}
        onOpen={setDialog}
      />
    </div>
  )
}
