'use client'

import { useRef, useState } from 'react'
import { Button } from '@/components/ui/Button'
import { Choice, Field } from '@/components/ui/Field'
import { BASES } from '@/lib/procedure/kinds'
import type { Mark } from '@/lib/procedure/mark'
import { formatQuantity, toSystem } from '@/lib/quantity/format'
import { hasNumber, type Quantity } from '@/lib/quantity/quantity'
import { type Reading, readQuantities } from '@/lib/quantity/read'
import { completeUnit, findUnit, unitOf, unitSymbol } from '@/lib/quantity/units'
import type { SheetActions } from './actions'
import { changeMark, setText } from './changes'
import { SpecScale } from './SpecScale'
import styles from './sheet.module.css'

type Props = { readonly mark: Mark; readonly actions: SheetActions }

const LIMITS = [
  ['low', 'At least'],
  ['nominal', 'Aim at'],
  ['high', 'At most'],
] as const

const without = (quantity: Quantity, field: keyof Quantity): Quantity => {
  const { [field]: _, ...rest } = quantity
  return rest
}

const numberOf = (typed: string): number | undefined => {
  const value = Number(typed.trim().replace(',', '.').replace('−', '-'))
  return Number.isFinite(value) ? value : undefined
}

const orderProblem = ({ low, nominal, high }: Quantity): string | undefined => {
  if (low !== undefined && high !== undefined && low > high) return `the least, ${low}, is over the most, ${high}`
  if (low !== undefined && nominal !== undefined && low > nominal)
    return `the least, ${low}, is over the aim, ${nominal}`
  if (high !== undefined && nominal !== undefined && nominal > high)
    return `the aim, ${nominal}, is over the most, ${high}`
  return undefined
}

const OtherUnit = ({ quantity }: { readonly quantity: Quantity }) => {
  if (quantity.unit === undefined || !hasNumber(quantity)) return null
  const other = toSystem(quantity, unitOf(quantity.unit)?.system === 'us' ? 'metric' : 'us')
  return other === undefined || other.unit === quantity.unit ? null : (
    <p className={styles.said}>In the other unit, never wider: {formatQuantity(other)}</p>
  )
}

/** Quantities the words hold, each laid out so that one key takes it over. */
const Readings = ({ mark, actions }: Props) => {
  const [readings, setReadings] = useState<readonly Reading[]>()
  const source = mark.said === '' ? mark.text : mark.said
  const take = ({ quantity, reference, qualitative }: Reading) => {
    const condition = qualitative ?? reference
    actions.perform({
      do: 'change-mark',
      id: mark.id,
      to: {
        ...(hasNumber(quantity) ? { quantity } : {}),
        ...(condition === undefined ? {} : { reference: condition }),
      },
    })
    setReadings(undefined)
  }
  if (readings === undefined)
    return <Button onClick={() => setReadings(readQuantities(source))}>Read the quantity from the words</Button>
  if (readings.length === 0) return <p className={styles.said}>No quantity was read in these words.</p>
  return (
    <ul className={styles.readings}>
      {readings.map(reading => (
        <li key={reading.at}>
          <Button onClick={() => take(reading)}>
            Take{' '}
            {hasNumber(reading.quantity) ? formatQuantity(reading.quantity) : (reading.qualitative ?? reading.text)}
            {reading.reference === undefined ? '' : ` ${reading.reference}`}
          </Button>
          {reading.notes.map(note => (
            <small key={note.text}> {note.text}</small>
          ))}
        </li>
      ))}
    </ul>
  )
}

/** The quantity as limits with unit, condition and basis; each field by itself. */
export const SpecFields = ({ mark, actions }: Props) => {
  const quantity = mark.quantity ?? {}
  // Two fields may be taken over before the sheet is drawn again.
  const now = useRef(quantity)
  now.current = quantity
  const put = (next: Quantity) => {
    now.current = next
    actions.perform(
      hasNumber(next) || next.unit !== undefined
        ? { do: 'change-mark', id: mark.id, to: { quantity: next } }
        : { do: 'change-mark', id: mark.id, clear: ['quantity'] },
    )
  }
  const setLimit = (field: 'low' | 'nominal' | 'high') => (typed: string) => {
    if (typed.trim() === '') {
      put(without(now.current, field))
      return undefined
    }
    const value = numberOf(typed)
    if (value === undefined) return `“${typed}” is no number`
    const next = { ...now.current, [field]: value }
    const problem = orderProblem(next)
    if (problem === undefined) put(next)
    return problem
  }
  const setUnit = (typed: string) => {
    if (typed.trim() === '') {
      put(without(now.current, 'unit'))
      return undefined
    }
    const unit = findUnit(typed.trim())
    if (unit === undefined) return `no unit “${typed}” is known: try N·m, lbf·ft, mm, psi, turn …`
    put({ ...now.current, unit: unit.code })
    return undefined
  }
  const symbol = quantity.unit === undefined ? '' : unitSymbol(quantity.unit)
  return (
    <>
      <div className={styles.fields} data-narrow="true">
        {LIMITS.map(([field, label]) => (
          <Field
            key={field}
            label={label}
            figures
            value={String(quantity[field] ?? '')}
            retry={mark.quantity}
            onDone={setLimit(field)}
          />
        ))}
        <Field label="Unit" value={symbol} list={completeUnit('', 80).map(unit => unit.symbol)} onDone={setUnit} />
      </div>
      <SpecScale quantity={quantity} />
      <OtherUnit quantity={quantity} />
      <Readings mark={mark} actions={actions} />
      <div className={styles.fields}>
        <Field
          label="Condition or words (cold, past contact, hand tight)"
          value={mark.reference ?? ''}
          onDone={setText(mark, 'reference', actions)}
        />
      </div>
      <div className={styles.fields}>
        <Choice
          label="Basis"
          value={mark.basis ?? ''}
          options={[
            ['', 'not said'] as const,
            ...BASES.map(
              basis =>
                [
                  basis,
                  {
                    spoken: 'spoken only',
                    plate: 'plate or label',
                    manual: 'manual',
                    'common-practice': 'common practice',
                  }[basis],
                ] as const,
            ),
          ]}
          onChoose={basis => actions.perform(changeMark(mark.id, 'basis', basis))}
        />
        <Field
          label="Where it stands (manual, page, plate)"
          value={mark.citation ?? ''}
          onDone={setText(mark, 'citation', actions)}
        />
      </div>
    </>
  )
}
