/** Limits on how often: a bucket per key that refills steadily. */

export type Limit = { burst: number; perSecond: number }

export class Buckets {
  private readonly buckets = new Map<string, { left: number; at: number }>()

  constructor(
    private readonly limit: Limit,
    private readonly now: () => number = Date.now
  ) {}

  /** Whether one more is allowed now; if so it is counted. */
  take(key: string): boolean {
    const at = this.now()
    const bucket = this.buckets.get(key) ?? { left: this.limit.burst, at }
    const left = Math.min(
      this.limit.burst,
      bucket.left + ((at - bucket.at) / 1000) * this.limit.perSecond
    )
    const isAllowed = left >= 1
    this.buckets.set(key, { left: isAllowed ? left - 1 : left, at })
    if (this.buckets.size > 10_000) this.forgetFull(at)
    return isAllowed
  }

  private forgetFull(at: number) {
    const secondsToFill = this.limit.burst / this.limit.perSecond
    for (const [key, bucket] of this.buckets) {
      if (at - bucket.at > secondsToFill * 1000) this.buckets.delete(key)
    }
  }
}
