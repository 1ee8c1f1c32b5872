declare module 'jstat' {
  type Distribution = {
    cdf: (x: number, ...parameters: number[]) => number
    inv: (share: number, ...parameters: number[]) => number
  }
  const statistics: { jStat: { chisquare: Distribution; normal: Distribution } }
  export default statistics
}
