import type { Quantity } from '@/lib/quantity/quantity'
import styles from './sheet.module.css'

const WIDTH = 240
const PAD = 30

/** A drawn scale of the limits: low and high as end stops, the nominal as a tick, an open side as an arrow. */
export const SpecScale = ({ quantity }: { readonly quantity: Quantity }) => {
  const { low, high, nominal } = quantity
  const known = [low, nominal, high].filter(value => value !== undefined)
  const [least, most] = [Math.min(...known), Math.max(...known)]
  if (known.length === 0) return null
  const x = (value: number): number =>
    most === least ? WIDTH / 2 : PAD + ((value - least) / (most - least)) * (WIDTH - 2 * PAD)
  const from = low === undefined ? (high === undefined ? undefined : 4) : x(low)
  const to = high === undefined ? (low === undefined ? undefined : WIDTH - 4) : x(high)
  return (
    <svg className={styles.scale} viewBox={`0 0 ${WIDTH} 44`} width={WIDTH} height={44} aria-hidden="true">
      <path d={`M2 20H${WIDTH - 2}`} className={styles.scaleAxis} />
      {from !== undefined && to !== undefined && <path d={`M${from} 20H${to}`} className={styles.scaleBand} />}
      {low !== undefined && (
        <path d={`M${x(low)} 12v16 M${x(low)} 12h5 M${x(low)} 28h5`} className={styles.scaleStop} />
      )}
      {high !== undefined && (
        <path d={`M${x(high)} 12v16 M${x(high)} 12h-5 M${x(high)} 28h-5`} className={styles.scaleStop} />
      )}
      {nominal !== undefined && <path d={`M${x(nominal)} 9v22`} className={styles.scaleNominal} />}
      {[...new Set(known)].map(value => (
        <text key={value} x={x(value)} y={42} textAnchor="middle" className={styles.scaleText}>
          {value}
        </text>
      ))}
    </svg>
  )
}
