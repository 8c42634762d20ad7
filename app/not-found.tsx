import Link from 'next/link'
import styles from '@/components/bench/bench.module.css'

export default function NotFound() {
  return (
    <main className={styles.door}>
      <h1>There is no page here</h1>
      <p>Nothing of yours is lost: your recordings lie on the bench of this browser.</p>
      <p>
        <Link href="/">To the bench</Link>
      </p>
    </main>
  )
}
