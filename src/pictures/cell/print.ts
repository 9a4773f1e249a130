// What is printed on the side of a whole cell: lettering, square code, crossed-out bin.
import { part, round, tag } from '../svg.ts'
import { measureText } from '../type/measure.ts'
import type { Cell } from './anatomy.ts'
import { type Camera, rise } from './camera.ts'
import { crossedBin } from './crossed-bin.ts'
import { dotCode } from './dot-code.ts'
import { letterings, sheen } from './lettering.ts'
import type { CellParameters } from './parameters.ts'
import { groundOf, printOn } from './wrap-colours.ts'

/** Draws it upright along the cell; what lies under a coloured wrap shows faintly. */
export function print(params: CellParameters, cell: Cell, camera: Camera): string {
  const see = (place: string): number =>
    place === 'wrap' || params.wrap === 'missing' || params.wrapColour === 'clear' ? 1 : 0.38
  const r = cell.radius * camera.scale
  const at = (z: number): number => camera.y - rise(camera) * z + r * camera.tilt
  let out = ''
  if (params.lettering !== 'none') {
    const y = at(-cell.length * 0.36)
    const style = {
      'font-size': r * 0.62,
      'font-weight': 700,
      'text-anchor': 'middle',
      fill: printOn(params),
      'fill-opacity': see(params.lettering),
      transform: `translate(${round(camera.x + r * 0.14)} ${round(y)}) rotate(-90)`,
    }
    out += part('lettering', tag('text', style, letterings[params.wording]))
    if (see(params.lettering) < 1)
      out += shineOver(camera.x - r * 0.08, y, r * 0.62, measureText(letterings[params.wording], r * 0.62, 'bold'))
  }
  if (params.code !== 'none') {
    out += dotCode(
      camera.x - r * 0.08,
      at(-cell.length * 0.76),
      r * 0.72,
      { kind: params.codeKind, print: params.codePrint },
      printOn(params),
      see(params.code),
    )
    if (see(params.code) < 1) out += shineOver(camera.x - r * 0.08, at(-cell.length * 0.76), r * 0.72, r * 0.72)
  }
  if (params.bin)
    out += crossedBin(camera.x - r * 0.08, at(-cell.length * 0.63), r * 0.66, printOn(params), groundOf(params))
  return out
}

/** Over print that lies below the wrap, centred on a point and as wide and tall as it is. */
const shineOver = (x: number, y: number, width: number, height: number): string =>
  part('sheen', sheen(x - width * 0.7, y - height * 0.55, width * 1.4, height * 1.1, false))
