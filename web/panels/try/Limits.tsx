import {
  changeFeature,
  currencyOf,
  DEFAULT_GUST,
  formatLength,
  formatSpeed,
  GROUND_KINDS,
  groundName,
  groundOf,
  parseLength,
  parseNumber,
  parseSpeed,
  ROD_MEETS,
  setClimate,
  setSite,
  setStock,
} from '../../../engine/index.ts';
import type { GroundKind, Plan } from '../../../engine/index.ts';
import { calledOf } from '../../map/drawing/feature-edits.ts';
import { commitEdit } from '../../state/edit.ts';
import { planProblems } from '../../state/plan-checks.ts';
import { plan, units } from '../../state/yard.ts';
import { Word, WordBox } from './Word.tsx';

/** What a rod pushed in by hand tells first; what only the build sheet asks stays choosable where the yard says it. */
const RODS: Readonly<Record<GroundKind, string>> = {
  [ROD_MEETS.firm]: 'firm soil',
  [ROD_MEETS.soft]: 'soft soil',
  [ROD_MEETS.rock]: 'rock',
  [ROD_MEETS.paving]: 'paving',
  wet: groundName('wet'),
  wheels: groundName('wheels'),
};
const ASKED: readonly GroundKind[] = Object.values(ROD_MEETS);

/**
 * What every price stands on, asked before anything is sought: the yard's ground and gust, the money and the height
 * allowed. They stay with the yard, and hold for options drawn by hand and for the build sheet too.
 */
export function Limits() {
  const { site, climate, stock } = plan.value;
  const { ground, isSaid } = groundOf(plan.value);
  const gust = climate.gust ?? DEFAULT_GUST;
  const choices = Object.fromEntries(
    GROUND_KINDS.filter((kind) => ASKED.includes(kind) || kind === ground).map((kind) => [
      kind,
      kind === ground && !isSaid ? `${RODS[kind]}, at a guess` : RODS[kind],
    ]),
  );
  const maxHeight = site.rules?.maxHeight;
  return (
    <p class="wish">
      Spend at most{' '}
      <WordBox
        label="Budget"
        value={stock?.budget === undefined ? '' : `${stock.budget} ${currencyOf(plan.value)}`}
        empty="any money"
        onChange={(text) => take('Change the budget', text, moneyIn, (budget) => setStock(plan.value, { budget }))}
      />
      , build no higher than{' '}
      <WordBox
        label="Highest"
        value={maxHeight === undefined ? '' : formatLength(maxHeight, units.value)}
        empty="any height"
        onChange={(text) =>
          take('Change the height allowed', text, (typed) => parseLength(typed, units.value), withHeight)
        }
      />
      , in{' '}
      <Word
        label="What a rod pushed by hand meets"
        value={ground}
        choices={choices}
        onChange={(kind) =>
          commitEdit('Say what the posts stand in', setSite(plan.value, { soil: kind as GroundKind }))
        }
      />
      , for gusts of{' '}
      <WordBox
        label="Strongest gust"
        value={climate.gust === undefined ? '' : formatSpeed(gust, units.value)}
        empty={`${formatSpeed(gust, units.value)}, a guess`}
        onChange={(text) =>
          take(
            'Change the strongest gust',
            text.replace(/\s*\(.*$/, ''),
            (typed) => parseSpeed(typed, units.value),
            (speed) => setClimate(plan.value, { gust: speed }),
          )
        }
      />
      <FromWall />.
    </p>
  );
}

/** Which wall cloth may hang from: two posts fewer, where its owner agrees and somebody who may fixes it. */
function FromWall() {
  const walls = plan.value.features.filter((feature) => feature.kind === 'wall' || feature.kind === 'building');
  if (walls.length === 0) return null;
  const held = walls.find(({ holdsCloth }) => holdsCloth === true);
  const choices = {
    '': 'all on posts',
    ...Object.fromEntries(walls.map((wall) => [`wall:${wall.id}`, calledOf(wall)])),
  };
  return (
    <>
      ; may it hang from a wall of yours?{' '}
      <Word
        label="Wall to hang from"
        value={held ? `wall:${held.id}` : ''}
        choices={choices}
        onChange={(key) => {
          const next = walls.reduce(
            (all, { id }) => changeFeature(all, id, { holdsCloth: key === `wall:${id}` ? true : undefined }),
            plan.value,
          );
          commitEdit('Say which wall cloth may hang from', next);
        }}
      />
    </>
  );
}

/** Puts what was typed into the yard. @returns why it cannot be, else `null` */
function take(
  label: string,
  text: string,
  read: (typed: string) => number | null,
  withIt: (value: number | undefined) => Plan,
): string | null {
  const value = text.trim() === '' ? undefined : read(text);
  if (value === null || (value !== undefined && value <= 0))
    return `“${text}” is no number above 0 that can be read here.`;
  const next = withIt(value);
  const fault = planProblems(next)?.find(({ severity }) => severity === 'error');
  if (fault) return fault.message;
  return commitEdit(label, next) ? null : 'This yard can be looked at here, not changed.';
}

/** "200 EUR" is 200. */
function moneyIn(typed: string): number | null {
  return parseNumber(typed.replace(/[^\d.,\s]/g, ''));
}

function withHeight(maxHeight: number | undefined): Plan {
  const { rules } = plan.value.site;
  return setSite(plan.value, { rules: { ...rules, maxHeight } });
}
