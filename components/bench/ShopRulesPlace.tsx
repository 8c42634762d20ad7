'use client'

import { useEffect, useRef, useState } from 'react'
import { Button } from '@/components/ui/Button'
import { FileInput } from '@/components/ui/FileInput'
import { formatProblems } from '@/lib/procedure/problem'
import styles from './bench.module.css'
import { saveFile } from './saving'
import { dropShopRules, formatFirstRules, keepShopRules, keptRules, readKeptRules } from './shop-rules'

const FIELDS = [
  ['levels', 'how grave each rule is: stop, fix or consider; off silences it'],
  ['phrases', 'words that must stand on the sheet; with "where", only on sheets that have that word'],
  ['hazards', 'words in a step, tool or material that bring a hazard of this shop, and the caution it wants'],
  ['names', 'the name this shop uses, and the names not to use for it'],
] as const

/** The shop's own rules for every review in this browser: levels, required words, hazards, names of parts and tools. */
export const ShopRulesPlace = () => {
  const input = useRef<HTMLInputElement>(null)
  const [name, setName] = useState<string>()
  const [problem, setProblem] = useState<string>()
  const [isUsed, setUsed] = useState(true)
  useEffect(() => {
    const look = async () => {
      setName((await keptRules())?.name)
      const read = await readKeptRules()
      if (read?.ok !== false) return
      setUsed(false)
      setProblem(formatProblems(read.problems))
    }
    look().catch(() => undefined)
  }, [])
  const take = async (file: File | undefined) => {
    if (file === undefined) return
    setProblem(undefined)
    try {
      const parsed = await keepShopRules(file)
      if (parsed.ok) {
        setName(file.name)
        setUsed(true)
      } else setProblem(formatProblems(parsed.problems))
    } catch (error) {
      setProblem(error instanceof Error ? error.message : String(error))
    }
  }
  const without = async () => {
    await dropShopRules()
    setName(undefined)
    setProblem(undefined)
  }
  const first = async () => saveFile('tellwright-rules.json', await formatFirstRules(), 'application/json')
  return (
    <section aria-label="The shop's own rules">
      <h2>The shop's own rules</h2>
      <p className={styles.quiet} role="status">
        {name === undefined
          ? 'None. A rules file sets the level of findings, asks for words, adds hazards, and says which names to use.'
          : isUsed
            ? `Reviews here go by ${name} as well.`
            : `${name} is kept here but can't be read any more: reviews go without it.`}
      </p>
      <div className={styles.dropRow}>
        <Button onClick={() => input.current?.click()}>
          {name === undefined ? 'Choose a rules file' : 'Choose another'}
        </Button>
        {name !== undefined && (
          <Button look="quiet" onClick={() => void without()}>
            Do without
          </Button>
        )}
        {name === undefined && (
          <Button look="quiet" onClick={() => void first()}>
            Save one to begin with
          </Button>
        )}
        <FileInput ref={input} label="Rules file" onFiles={([file]) => void take(file)} />
      </div>
      {problem !== undefined && (
        <p role="alert" className={styles.listProblem}>
          {problem}
        </p>
      )}
      <details className={`${styles.quiet} ${styles.fileFields}`}>
        <summary>What stands in a rules file</summary>
        <dl>
          {FIELDS.map(([field, about]) => (
            <div key={field}>
              <dt>
                <code>{field}</code>
              </dt>
              <dd>{about}</dd>
            </div>
          ))}
        </dl>
      </details>
    </section>
  )
}
