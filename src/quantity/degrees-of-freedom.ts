/** A contribution to a combined standard uncertainty. */
export interface Component {
  /** Its standard uncertainty, as it contributes to the result. */
  readonly standard: number
  /** Its degrees of freedom; undefined means unlimited. */
  readonly degreesOfFreedom: number | undefined
}

/**
 * Effective degrees of freedom by the Welch-Satterthwaite formula, for independent components: JCGM 100:2008, G.4.1. Infinity where
 * no component is limited.
 */
export function combinedDegrees(components: readonly Component[]): number {
  let variance = 0
  for (const { standard } of components) variance += standard ** 2
  let loss = 0
  for (const { standard, degreesOfFreedom } of components)
    if (degreesOfFreedom !== undefined && variance > 0) loss += (standard ** 2 / variance) ** 2 / degreesOfFreedom
  return loss === 0 ? Number.POSITIVE_INFINITY : 1 / loss
}
