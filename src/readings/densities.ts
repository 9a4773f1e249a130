// How much energy a claim or a measurement puts into each litre and each kilogram of a cell, with its uncertainty.

export type Density = {
  readonly value: number
  readonly unit: 'Wh/L' | 'Wh/kg'
  /** Standard uncertainty, same unit; 0 where no input had one. */
  readonly u: number
}

export type Energy = {
  readonly capacity_mAh: number
  readonly nominalV: number
  /** Standard uncertainties of the inputs, each in its own unit; absent means taken as exact (a claim is). */
  readonly uCapacity_mAh?: number
  readonly uNominalV?: number
}

/**
 * Energy over the outer volume of a cylinder: (mAh · V / 1000) / (π/4 · d² · l / 10⁶) in Wh/L.
 *
 * u follows JCGM 100:2008 5.1.6 for a product of powers, inputs independent; the diameter counts twice.
 */
export function claimedEnergyDensity(
  claim: Energy & {
    readonly diameter_mm: number
    readonly length_mm: number
    readonly uDiameter_mm?: number
    readonly uLength_mm?: number
  },
): Density {
  const litres = ((Math.PI / 4) * claim.diameter_mm ** 2 * claim.length_mm) / 1e6
  const value = wattHours(claim) / litres
  const relative = Math.hypot(
    relativeEnergy(claim),
    (2 * (claim.uDiameter_mm ?? 0)) / claim.diameter_mm,
    (claim.uLength_mm ?? 0) / claim.length_mm,
  )
  return { value, unit: 'Wh/L', u: value * relative }
}

/** Energy over mass in Wh/kg, u as for `claimedEnergyDensity`. */
export function claimedEnergyPerMass(claim: Energy & { readonly mass_g: number; readonly uMass_g?: number }): Density {
  const value = wattHours(claim) / (claim.mass_g / 1000)
  return { value, unit: 'Wh/kg', u: value * Math.hypot(relativeEnergy(claim), (claim.uMass_g ?? 0) / claim.mass_g) }
}

/** Energy of a claim, Wh: capacity times nominal voltage. */
function wattHours({ capacity_mAh, nominalV }: Energy): number {
  return (capacity_mAh * nominalV) / 1000
}

function relativeEnergy({ capacity_mAh, nominalV, uCapacity_mAh = 0, uNominalV = 0 }: Energy): number {
  return Math.hypot(uCapacity_mAh / capacity_mAh, uNominalV / nominalV)
}
