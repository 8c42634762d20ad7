import { memo, type ReactNode } from 'react'
import type { TalkParagraph as Paragraph, TalkWord } from '@/lib/transcript/talk'
import type { Portion } from './brackets'
import { TalkParagraph } from './TalkParagraph'
import styles from './talk.module.css'

/** Paragraphs drawn, passed over and watched as one: about a window full. */
export const PORTION = 8

/** Marks the element of a portion: `data-portion="3"`. */
export const PORTION_NAME = 'data-portion'

type Props = {
  /** Number of the portion: its first paragraph is `at * PORTION`. */
  readonly at: number
  readonly paragraphs: readonly Paragraph[]
  readonly words: readonly TalkWord[]
  readonly brackets: Portion
  /** Id of the chosen mark, where it stands here. */
  readonly chosen: string | undefined
  readonly isNear: boolean
  readonly width: number
  readonly hasTimes: boolean
  /** The first of the words held, where it stands here. */
  readonly held: number | undefined
  /** A form under one of these paragraphs. */
  readonly form: { readonly paragraph: number; readonly shown: ReactNode } | undefined
  readonly onCorrect: (word: number) => void
  readonly onChoose: (id: string) => void
  readonly onTime: (seconds: number) => void
  readonly onSpeaker: (paragraph: number) => void
}

/** Some paragraphs on end, passed over as one where nothing in them changed: a talk of hours has thousands. */
export const TalkPortion = memo(({ at, paragraphs, words, brackets, held, form, ...rest }: Props) => (
  <div className={styles.portion} {...{ [PORTION_NAME]: at }}>
    {paragraphs.map((paragraph, i) => {
      const index = at * PORTION + i
      return (
        <TalkParagraph
          key={index}
          index={index}
          paragraph={paragraph}
          words={words}
          brackets={brackets[i] ?? NONE}
          held={held !== undefined && words[held]?.paragraph === index ? held : undefined}
          {...rest}
        >
          {form?.paragraph === index && form.shown}
        </TalkParagraph>
      )
    })}
  </div>
))

const NONE: Portion[number] = []
