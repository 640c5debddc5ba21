import {
  type Cloth,
  formatLength,
  formatShare,
  isCloth,
  nameOf,
  parseLength,
  parseNumber,
} from '../../../engine/index.ts';
import type { Feature, GrownQuestion } from '../../../engine/index.ts';
import { calledOf, change } from '../../map/drawing/feature-edits.ts';
import { goToStage, selection } from '../../state/view.ts';
import { plan, units } from '../../state/yard.ts';
import { TextBox } from '../parts/boxes/TextBox.tsx';

/**
 * What a year may have changed, with last year's number beside each box; every answer goes into the plan at once and
 * can be undone.
 */
export function Grown({ questions, last }: { readonly questions: readonly GrownQuestion[]; readonly last: number }) {
  const { features } = plan.value;
  const cloths = features.filter(isCloth);
  const pots = features.filter((feature) => feature.kind === 'plant' && feature.container === true);
  return (
    <div class="grown">
      <h3>What has changed since {last}?</h3>
      {questions.map(({ feature, key, now, question }) => (
        <TextBox
          key={`${feature}-${key}`}
          label={question}
          value={formatLength(now, units.value)}
          onChange={(text) => takeLength(feature, key, text)}
        />
      ))}
      {cloths.map((cloth) => (
        <TextBox
          key={cloth.id}
          label={
            `Cloth fades. How much of the light does ${calledOf(cloth)} stop now, in %? Bought as ` +
            `${formatShare(cloth.density)}.`
          }
          value={cloth.measuredDensity === undefined ? '' : `${(100 * cloth.measuredDensity).toFixed(0)}`}
          placeholder="as bought"
          onChange={(text) => takeDensity(cloth, text)}
        />
      ))}
      {pots.length > 0 && (
        <p>
          Did a pot move?{' '}
          {pots.map((pot) => (
            <button key={pot.id} type="button" onClick={() => moveOnPlan(pot)}>
              Move {calledOf(pot)}
            </button>
          ))}
        </p>
      )}
    </div>
  );
}

function takeLength(id: string, key: GrownQuestion['key'], text: string): string | null {
  const metres = parseLength(text, units.value);
  if (metres === null || metres <= 0) return `"${text}" is not a length such as ${formatLength(1.8, units.value)}.`;
  return change(id, `Say what grew: ${nameOf(plan.value, id)}`, { [key]: metres });
}

function takeDensity(cloth: Cloth, text: string): string | null {
  const percent = text === '' ? null : parseNumber(text.replace(/\s*%$/, ''));
  if (text !== '' && (percent === null || percent < 0 || percent > 100))
    return `"${text}" is not a share from 0 to 100 %.`;
  return change(cloth.id, `Measure the cloth of ${calledOf(cloth)}`, {
    measuredDensity: percent === null ? undefined : percent / 100,
  });
}

function moveOnPlan({ id }: Feature): void {
  selection.value = [id];
  goToStage('draw');
}
