'use client'

import { useMemo } from 'react'
import { Glyph } from '@/components/ui/Glyph'
import { KIND_KEYS } from '@/components/ui/kinds'
import type { Kind } from '@/lib/procedure/kinds'
import { formatQuantity } from '@/lib/quantity/format'
import { hasNumber } from '@/lib/quantity/quantity'
import { readQuantities } from '@/lib/quantity/read'
import { type Talk, textOfWords, type WordRange } from '@/lib/transcript/talk'
import styles from './bench.module.css'

type Props = {
  readonly talk: Talk
  readonly words: WordRange | undefined
  readonly hasChosen: boolean
  readonly onKind: (kind: Kind) => void
}

/** Longest text in which limits are looked for while words are held. */
const LONGEST = 400

const limitsIn = (talk: Talk, words: WordRange | undefined): string => {
  if (words === undefined) return ''
  const text = textOfWords(talk, words)
  if (text.length > LONGEST) return ''
  return readQuantities(text)
    .map(({ quantity, qualitative, reference, isApproximate = false }) =>
      [
        hasNumber(quantity) ? formatQuantity(quantity, { isApproximate }) : (qualitative ?? ''),
        hasNumber(quantity) ? (reference ?? '') : '',
      ]
        .join(' ')
        .trim(),
    )
    .filter(text => text !== '')
    .join('; ')
}

/** The kinds, to mark the words held or to change the chosen mark; and the limit the words hold, as it would be read. */
export const KindBar = ({ talk, words, hasChosen, onKind }: Props) => {
  const limits = useMemo(() => limitsIn(talk, words), [talk, words])
  const isOn = words !== undefined || hasChosen
  return (
    // biome-ignore lint/a11y/useSemanticElements: a bar of buttons, no form
    <div
      className={styles.kindBar}
      role="group"
      aria-label={words === undefined ? 'Kind of the chosen mark' : 'Mark the words held'}
    >
      {KIND_KEYS.map(({ kind, key, about }) => (
        <button key={kind} type="button" disabled={!isOn} title={`${kind}: ${about}`} onClick={() => onKind(kind)}>
          <Glyph kind={kind} />
          {kind}
          <kbd>{key.toUpperCase()}</kbd>
        </button>
      ))}
      {limits !== '' && (
        <output>
          reads as <b>{limits}</b>
        </output>
      )}
    </div>
  )
}
