import { BenchList } from '@/components/bench/BenchList'

export default function Page() {
  return <BenchList />
}
