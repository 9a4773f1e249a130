// How much a cell should warm under a load, to notice a sensor that is not on the cell.

export type ThermalModel = {
  readonly current_A: number
  readonly resistance_mΩ: number
  readonly mass_g: number
  /** Specific heat, J/(kg·K). */
  readonly heat_JpkgK: number
  /** Heat passed to the surroundings, W/K. */
  readonly loss_WpK: number
}

/**
 * Temperature rise after `seconds` of constant load, K: ΔT(t) = (I²R/hA)·(1 − e^(−t/τ)), τ = m·c/hA.
 *
 * Heat of the reaction itself is left out (Bernardi 1985, from memory), and c and hA are assumed: plausibility only.
 */
export function expectedRise(model: ThermalModel, seconds: number): number {
  const watts = (model.current_A ** 2 * model.resistance_mΩ) / 1000
  const tau = ((model.mass_g / 1000) * model.heat_JpkgK) / model.loss_WpK
  return (watts / model.loss_WpK) * -Math.expm1(-seconds / tau)
}
