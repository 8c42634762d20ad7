'use client'

import { useEffect, useState } from 'react'
import { Button } from '@/components/ui/Button'
import type { Mark } from '@/lib/procedure/mark'
import type { SheetActions } from './actions'
import styles from './sheet.module.css'

type Model = { readonly address: string | null }
type Answer = { readonly text?: string; readonly problem?: string }

let asked: Promise<Model> | undefined

/** Whether the user set a model up; asked once a visit. */
const modelOf = (): Promise<Model> => {
  asked ??= fetch('/reword')
    .then(answer => (answer.ok ? (answer.json() as Promise<Model>) : { address: null }))
    .catch(() => ({ address: null }))
  return asked
}

/** Where the user runs a language model: asks it for the line anew. What it proposes is taken only by the user's hand. */
export const Reword = ({ mark, actions }: { readonly mark: Mark; readonly actions: SheetActions }) => {
  const [address, setAddress] = useState<string | null>(null)
  const [state, setState] = useState<Answer & { readonly isAsking?: boolean }>({})
  useEffect(() => {
    let isOver = false
    modelOf().then(model => {
      if (!isOver) setAddress(model.address)
    })
    return () => {
      isOver = true
    }
  }, [])
  if (address === null) return null
  const ask = async () => {
    setState({ isAsking: true })
    try {
      const answer = await fetch('/reword', {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify({ kind: mark.kind, text: mark.text }),
      })
      setState((await answer.json()) as Answer)
    } catch (error) {
      setState({ problem: error instanceof Error ? error.message : String(error) })
    }
  }
  const { text, problem, isAsking = false } = state
  return (
    <div className={styles.fields}>
      <Button disabled={isAsking} onClick={() => void ask()}>
        {isAsking ? 'Asking' : `Ask the model at ${new URL(address).host} for other words`}
      </Button>
      {problem !== undefined && <small role="alert">Refused: {problem}</small>}
      {text !== undefined && (
        <>
          <q>{text}</q>
          <Button
            onClick={() => {
              actions.perform({ do: 'change-mark', id: mark.id, to: { text } })
              setState({})
            }}
          >
            Take these words
          </Button>
        </>
      )}
    </div>
  )
}
