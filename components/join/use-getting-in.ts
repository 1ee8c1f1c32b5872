'use client'

import { useRouter } from 'next/navigation'
import { useState } from 'react'

import { type Sent, useRowcall } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { forgetCode } from './use-code'

type Wish = Parameters<ReturnType<typeof useRowcall>['redeem']>[0]

/** Redeems a code and goes on into the crew. */
export function useGettingIn() {
  const router = useRouter()
  const { redeem } = useRowcall()
  const [isAsking, setIsAsking] = useState(false)
  const [sent, setSent] = useState<Sent | null>(null)

  return {
    isAsking,
    sent,
    getIn: async (wish: Wish) => {
      if (isAsking) return
      setIsAsking(true)
      const answer = await redeem(wish)
      setSent(answer)
      setIsAsking(false)
      if (answer.state !== 'accepted') return
      forgetCode()
      router.replace(routes.home())
    },
  }
}
