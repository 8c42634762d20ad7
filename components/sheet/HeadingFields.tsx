'use client'

import { Button } from '@/components/ui/Button'
import { Field } from '@/components/ui/Field'
import type { Heading, Interval, Reference } from '@/lib/procedure/project'
import type { SheetActions } from './actions'
import styles from './sheet.module.css'

type Props = { readonly heading: Heading; readonly actions: SheetActions; readonly onDone: () => void }

const TEXTS = [
  ['title', 'Title'],
  ['equipment', 'Equipment it is for'],
  ['revision', 'Revision'],
  ['author', 'Author'],
] as const

const IntervalFields = ({ heading, actions }: Omit<Props, 'onDone'>) => {
  const set = (field: keyof Interval) => (typed: string) => {
    const { [field]: _, ...rest } = heading.interval ?? {}
    if (typed.trim() === '') {
      actions.perform(
        Object.keys(rest).length === 0 ? { do: 'clear-interval' } : { do: 'change-heading', to: { interval: rest } },
      )
      return undefined
    }
    const value = Number(typed.trim().replace(',', '.'))
    if (!Number.isFinite(value) || value <= 0) return 'a number over 0'
    actions.perform({ do: 'change-heading', to: { interval: { ...rest, [field]: value } } })
    return undefined
  }
  return (
    <>
      <Field label="Due every … hours" figures value={String(heading.interval?.hours ?? '')} onDone={set('hours')} />
      <Field label="or every … months" figures value={String(heading.interval?.months ?? '')} onDone={set('months')} />
    </>
  )
}

/** The head of the sheet, field by field. */
export const HeadingFields = ({ heading, actions, onDone }: Props) => {
  const setReferences = (references: readonly Reference[]) =>
    actions.perform({ do: 'change-heading', to: { references } })
  return (
    <section className={styles.editor} aria-label="Head of the sheet">
      <div className={styles.fields}>
        {TEXTS.map(([field, label]) => (
          <Field
            key={field}
            label={label}
            value={heading[field]}
            onDone={typed => {
              actions.perform({ do: 'change-heading', to: { [field]: typed.trim() } })
              return undefined
            }}
          />
        ))}
        <IntervalFields heading={heading} actions={actions} />
      </div>
      <Field
        label="Scope: what it covers, who may do it"
        rows={2}
        value={heading.scope}
        onDone={typed => {
          actions.perform({ do: 'change-heading', to: { scope: typed.trim() } })
          return undefined
        }}
      />
      {heading.references.map((reference, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: references have no other identity than their place
        <div className={styles.fields} key={i}>
          {(['title', 'part'] as const).map(field => (
            <Field
              key={field}
              label={field === 'title' ? `Reference ${i + 1}` : 'Page or part'}
              value={reference[field]}
              onDone={typed => {
                setReferences(
                  heading.references.map((other, j) => (i === j ? { ...other, [field]: typed.trim() } : other)),
                )
                return undefined
              }}
            />
          ))}
          <Button onClick={() => setReferences(heading.references.filter((_, j) => i !== j))}>Take out</Button>
        </div>
      ))}
      <div className={styles.fields}>
        <Button onClick={() => setReferences([...heading.references, { title: '', part: '' }])}>Add a reference</Button>
        <Button look="quiet" onClick={onDone}>
          Done
        </Button>
      </div>
    </section>
  )
}
