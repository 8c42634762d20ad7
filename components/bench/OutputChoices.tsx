import { Choice } from '@/components/ui/Field'
import { CHOICES, type PublishChoice, type UnitChoice } from '@/lib/publish/publication'
import styles from './bench.module.css'

/** What holds for a publication whatever it is. */
export type Output = {
  readonly units: UnitChoice
  readonly isKeptOnly: boolean
  /** All findings, and those let stand, at the end. */
  readonly isListing: boolean
}

export const PLAIN_OUTPUT: Output = { units: 'as-said', isKeptOnly: false, isListing: false }

const UNIT_WORDS: readonly (readonly [UnitChoice, string])[] = [
  ['as-said', 'as said'],
  ['metric', 'metric'],
  ['us', 'US'],
  ['both', 'both'],
]

type Props = { readonly output: Output; readonly onChange: (to: Partial<Output>) => void }

export const UnitsChoice = ({ output, onChange }: Props) => (
  <Choice
    label="Units"
    value={output.units}
    options={UNIT_WORDS}
    onChoose={units => units !== '' && onChange({ units })}
  />
)

const EVERY: readonly PublishChoice[] = CHOICES

/** Which marks and findings are published; `heeds`: what the publication chosen asks for. */
export const OutputTicks = ({ output, onChange, heeds = EVERY }: Props & { readonly heeds?: typeof EVERY }) => (
  <>
    {heeds.includes('pencilled') && (
      <label className={styles.tick}>
        <input
          type="checkbox"
          checked={output.isKeptOnly}
          onChange={event => onChange({ isKeptOnly: event.target.checked })}
        />
        only kept marks
      </label>
    )}
    {heeds.includes('listFindings') && (
      <label className={styles.tick}>
        <input
          type="checkbox"
          checked={output.isListing}
          onChange={event => onChange({ isListing: event.target.checked })}
        />
        findings and waivers at the end
      </label>
    )}
  </>
)
