import { radiansOf } from '../../../engine/index.ts';
import type { PlantMark } from '../laid-on/overlays.ts';

/** Below this size only the worst side is drawn: eight would run together. [px] */
const ALL_SIDES_FROM_PX = 20;
const NS = 'http://www.w3.org/2000/svg';

/**
 * A plant's eight sides and its top as a small mark: petals as long and as dark as the harm from their side, the worst
 * rimmed.
 * @param upBearing The plan's +y axis. [°] Sides are true bearings, the paper is not.
 */
export function plantMarkSvg(mark: PlantMark, sizePx: number, upBearing: number): SVGSVGElement {
  const svg = document.createElementNS(NS, 'svg');
  svg.setAttribute('viewBox', '-20 -20 40 40');
  svg.setAttribute('width', String(sizePx));
  svg.setAttribute('height', String(sizePx));
  svg.setAttribute('aria-hidden', 'true');
  mark.sides.forEach((tone, side) => {
    if (sizePx < ALL_SIDES_FROM_PX && side !== mark.worst) return;
    svg.append(petal(side * 45 - upBearing, tone, side === mark.worst));
  });
  const top = document.createElementNS(NS, 'circle');
  top.setAttribute('r', '5');
  top.setAttribute('class', 'mark-top');
  top.style.setProperty('--tone', String(mark.top));
  svg.append(top);
  return svg;
}

function petal(turn: number, tone: number, worst: boolean): SVGPathElement {
  const reach = 8 + 11 * tone;
  const path = document.createElementNS(NS, 'path');
  const corner = (degrees: number, radius: number): string => {
    const angle = radiansOf(turn + degrees);
    return `${(radius * Math.sin(angle)).toFixed(2)} ${(-radius * Math.cos(angle)).toFixed(2)}`;
  };
  path.setAttribute(
    'd',
    `M${corner(-20, 6)}L${corner(-20, reach)}A${reach} ${reach} 0 0 1 ${corner(20, reach)}L${corner(20, 6)}Z`,
  );
  path.setAttribute('class', worst ? 'mark-side worst' : 'mark-side');
  path.style.setProperty('--tone', String(tone));
  return path;
}
