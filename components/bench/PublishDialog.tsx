'use client'

import { useEffect, useMemo, useState } from 'react'
import { Button } from '@/components/ui/Button'
import { Dialog } from '@/components/ui/Dialog'
import { Field } from '@/components/ui/Field'
import type { OpenFootage } from '@/lib/footage/open'
import { countOf } from '@/lib/procedure/count'
import type { Edit } from '@/lib/procedure/edit'
import type { Project } from '@/lib/procedure/project'
import { toSheet } from '@/lib/procedure/sheet'
import { LEAST_CHAPTER } from '@/lib/publish/chapters'
import { toPublishedFindings } from '@/lib/publish/findings'
import type { PublicationName, PublishedFile, PublishOptions } from '@/lib/publish/publication'
import { PUBLICATIONS, publicationOf } from '@/lib/publish/publications'
import { selected } from '@/lib/publish/selection'
import type { Finding } from '@/lib/review/rule'
import styles from './bench.module.css'
import { ClipProgress } from './ClipProgress'
import { type Output, OutputTicks, UnitsChoice } from './OutputChoices'
import { Release } from './Release'
import { saveFile } from './saving'
import { useClips } from './useClips'
import { usePublished } from './usePublished'
import { useSentences } from './useSentences'
import { useStills } from './useStills'

type Props = {
  readonly project: Project
  readonly findings: readonly Finding[]
  /** The footage, where it is at hand: clips are cut from it. */
  readonly opened: OpenFootage | undefined
  /** The pictures of its steps. */
  readonly stillsOf: () => Promise<ReadonlyMap<string, Blob>>
  readonly output: Output
  readonly onOutput: (to: Partial<Output>) => void
  /** Put before the times in links; empty for the footage's name. */
  readonly address: string
  readonly onAddress: (address: string) => void
  readonly onPerform: (...edits: Edit[]) => void
  readonly onFinding: (finding: Finding | undefined) => void
  readonly onReadBack: () => void
  readonly onSince: () => void
  readonly onClose: () => void
}

const PUBLICATION_WORDS: Readonly<Record<PublicationName, string>> = {
  sheet: 'Sheet (Markdown)',
  handout: 'Handout (to print)',
  notes: 'Show notes',
  captions: 'Captions',
  chapters: 'Chapters',
  page: 'Web page data (HowTo)',
  task: 'DITA task',
  packet: 'Packet with everything (ZIP)',
}

/** Publications that have no head to say anything at. */
const HEADLESS: ReadonlySet<PublicationName> = new Set(['captions', 'chapters'])

const nameOf = (file: PublishedFile): string => file.path.split('/').at(-1) ?? file.path

const Preview = ({ file }: { readonly file: PublishedFile }) => {
  const url = useMemo(
    () =>
      file.path.endsWith('.handout.html')
        ? URL.createObjectURL(new Blob([file.content as BlobPart], { type: file.type }))
        : undefined,
    [file],
  )
  useEffect(() => () => (url === undefined ? undefined : URL.revokeObjectURL(url)), [url])
  if (typeof file.content !== 'string') return <p>{file.content.length.toLocaleString('en')} bytes, no preview.</p>
  if (url !== undefined)
    return <iframe className={styles.preview} src={url} title={`Preview of ${file.path}`} sandbox="" />
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so the keyboard must reach it
    <section className={styles.preview} tabIndex={0} aria-label={`Preview of ${file.path}`}>
      <pre>{file.content.slice(0, 200_000)}</pre>
    </section>
  )
}

/** What is published, from one sheet: chosen, looked at, saved. */
export const PublishDialog = (props: Props) => {
  const { project, findings, opened, stillsOf, output, onOutput, address, onAddress } = props
  const { onPerform, onFinding, onReadBack, onSince, onClose } = props
  const [name, setName] = useState<PublicationName>('sheet')
  const { units, isKeptOnly, isListing } = output
  const [least, setLeast] = useState(LEAST_CHAPTER)
  const [isClipped, setClipped] = useState(false)

  const stills = useStills(project, stillsOf)
  const sentences = useSentences(project.recording.transcript)

  const sheet = useMemo(() => toSheet(project), [project])
  const published = useMemo(
    () => selected(sheet, { pencilled: isKeptOnly ? 'leave-out' : 'include' }),
    [sheet, isKeptOnly],
  )
  const clips = useClips(opened, published, isClipped, () => setClipped(false))

  const options = useMemo<PublishOptions>(
    () => ({
      units,
      pencilled: isKeptOnly ? 'leave-out' : 'include',
      listFindings: isListing,
      notes: { leastChapter: least },
      ...(clips.made === undefined ? {} : { clips: clips.made }),
      ...(stills === undefined ? {} : { stills }),
      ...(address === '' ? {} : { footageAddress: address }),
      ...(sentences === undefined ? {} : { sentences }),
      findings: toPublishedFindings(sheet, findings),
    }),
    [units, isKeptOnly, isListing, address, least, clips.made, stills, sentences, findings, sheet],
  )
  const heeds = publicationOf(name)?.heeds ?? []
  const isCutting = clips.running !== undefined
  const isWaiting = name === 'packet' && isCutting
  const made = usePublished(name, project, options, isWaiting)

  const stops = findings.filter(finding => finding.level === 'stop' && finding.waived === undefined)
  return (
    <Dialog title="Publish" onClose={onClose} wide>
      <div className={styles.publish}>
        <fieldset className={styles.publications}>
          <legend>What for</legend>
          {PUBLICATIONS.map(publication => (
            <label key={publication.name}>
              <input
                type="radio"
                name="publication"
                checked={publication.name === name}
                onChange={() => setName(publication.name)}
              />
              <span>
                <b>{PUBLICATION_WORDS[publication.name]}</b>
                <small>{publication.about}</small>
              </span>
            </label>
          ))}
          <Release
            project={project}
            options={options}
            stops={stops.length}
            isCutting={isCutting}
            onPerform={onPerform}
            onStop={() => {
              onClose()
              onFinding(stops[0])
            }}
          />
          <Button look="quiet" onClick={onReadBack}>
            Read an edited sheet back…
          </Button>
          <Button look="quiet" onClick={onSince}>
            What changed since an earlier sheet…
          </Button>
        </fieldset>
        <div className={styles.publishSide}>
          <div className={styles.publishOptions}>
            {heeds.includes('units') && <UnitsChoice output={output} onChange={onOutput} />}
            {heeds.includes('footageAddress') && (
              <Field
                label="Address of the footage in links (else its file name)"
                value={address}
                onDone={typed => {
                  onAddress(typed.trim())
                  return undefined
                }}
              />
            )}
            <OutputTicks output={output} onChange={onOutput} heeds={heeds} />
            {heeds.includes('leastChapter') && (
              <Field
                label="Shortest chapter, seconds"
                value={String(least)}
                figures
                onDone={typed => {
                  const seconds = typed.trim() === '' ? LEAST_CHAPTER : Number(typed.replace(',', '.'))
                  if (!(seconds >= 0)) return 'Seconds, 0 or more; shorter chapters are joined.'
                  setLeast(seconds)
                  return undefined
                }}
              />
            )}
            {name === 'packet' && (
              <label className={styles.tick}>
                <input
                  type="checkbox"
                  checked={isClipped && opened !== undefined}
                  disabled={opened === undefined || published.steps.length === 0}
                  onChange={event => setClipped(event.target.checked)}
                />
                with clips
                {opened === undefined ? ': open the footage first' : ` of ${countOf(published.steps.length, 'step')}`}
              </label>
            )}
          </div>
          {clips.running !== undefined && (
            <ClipProgress done={clips.running.done} of={clips.running.of} onStop={clips.stop} />
          )}
          {name === 'packet' &&
            clips.lines.map(line => (
              <p key={line} role="status">
                {line}
              </p>
            ))}
          {stops.length > 0 && (
            <p className={styles.stops} role="note">
              {countOf(stops.length, 'stop finding is', 'stop findings are')} open;{' '}
              {HEADLESS.has(name) ? 'nothing in these files says so.' : 'the publication says so at its head.'}
            </p>
          )}
          {made === undefined && !isWaiting && <p role="status">Writing it</p>}
          {made?.problem !== undefined && <p role="alert">{made.problem}</p>}
          {made?.files.map(file => (
            <section key={file.path} className={styles.madeFile}>
              <header>
                <code>{file.path}</code>
                <Button
                  look="main"
                  aria-label={`Save this file: ${nameOf(file)}`}
                  onClick={() => void saveFile(nameOf(file), file.content as BlobPart, file.type)}
                >
                  Save this file
                </Button>
              </header>
              {file.notices?.map(notice => (
                <p key={notice} className={styles.stops}>
                  {notice}
                </p>
              ))}
              <Preview file={file} />
            </section>
          ))}
          {made !== undefined && made.files.length === 0 && made.problem === undefined && (
            <p>There is nothing to publish under this name yet.</p>
          )}
        </div>
      </div>
    </Dialog>
  )
}
