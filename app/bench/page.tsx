import { BenchDoor } from '@/components/bench/BenchDoor'

type Props = { readonly searchParams: Promise<{ readonly recording?: string | string[] }> }

export default async function Page({ searchParams }: Props) {
  const { recording } = await searchParams
  return <BenchDoor id={typeof recording === 'string' ? recording : ''} />
}
