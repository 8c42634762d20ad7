'use client'

import { useEffect, useRef, useState } from 'react'
import { Button } from '@/components/ui/Button'
import { FileInput } from '@/components/ui/FileInput'
import { formatProblem } from '@/lib/procedure/problem'
import styles from './bench.module.css'
import { dropShopRules, keepShopRules, keptRules } from './shop-rules'

/** The shop's own rules for every review in this browser: levels, required words, hazards, names of parts and tools. */
export const ShopRulesPlace = () => {
  const input = useRef<HTMLInputElement>(null)
  const [name, setName] = useState<string>()
  const [problem, setProblem] = useState<string>()
  useEffect(() => {
    keptRules()
      .then(kept => setName(kept?.name))
      .catch(() => undefined)
  }, [])
  const take = async (file: File | undefined) => {
    if (file === undefined) return
    setProblem(undefined)
    const parsed = await keepShopRules({ name: file.name, text: await file.text() })
    if (parsed.ok) setName(file.name)
    else setProblem(parsed.problems.map(formatProblem).join('\n'))
  }
  return (
    <section aria-label="The shop's own rules">
      <h2>The shop's own rules</h2>
      <p className={styles.quiet}>
        {name === undefined
          ? 'None. A rules file sets the level of findings, asks for words, adds hazards, and says which names to use.'
          : `Reviews here go by ${name} as well.`}
      </p>
      <div className={styles.dropRow}>
        <Button onClick={() => input.current?.click()}>
          {name === undefined ? 'Choose a rules file' : 'Choose another'}
        </Button>
        {name !== undefined && (
          <Button look="quiet" onClick={() => void dropShopRules().then(() => setName(undefined))}>
            Do without
          </Button>
        )}
        <FileInput ref={input} label="Rules file" onFiles={([file]) => void take(file)} />
      </div>
      {problem !== undefined && (
        <p role="alert" className={styles.listProblem}>
          {problem}
        </p>
      )}
    </section>
  )
}
