import { Choices, Field } from '../../parts/boxes/Field.tsx';
import { SHAPES, answer, answers } from '../answers.ts';
import type { Shape } from '../answers.ts';
import { ShapePicture } from '../ShapePicture.tsx';
import { USUAL } from '../usual.ts';
import { askedUnits, inAsked } from './asked-units.ts';

export function GroundQuestion() {
  const { shape, across, deep, measure } = answers.value;
  const metric = askedUnits() === 'metric';
  const usual = (metres: number): string =>
    measure === 'steps' ? String(Math.round(metres / USUAL.step)) : inAsked(metres);
  const pictures = Object.fromEntries(
    Object.entries(SHAPES).map(([key, words]): [string, preact.JSX.Element] => [
      key,
      <>
        <ShapePicture shape={key as Shape} />
        {words}
      </>,
    ]),
  ) as Record<Shape, preact.JSX.Element>;
  return (
    <>
      <Choices
        legend="Nearest to"
        name="shape"
        value={shape}
        choices={pictures}
        class="choices-shapes"
        onChange={(next) => answer({ shape: next })}
      />
      <Choices
        legend="Measured in"
        name="measure"
        value={measure}
        choices={{
          length: metric ? 'metres' : 'feet',
          steps: `steps of about ${metric ? `${USUAL.step} m` : '2½ ft'}`,
        }}
        onChange={(next) => answer({ measure: next })}
      />
      <Field label="Across" value={across} usual={usual(USUAL.across)} onInput={(text) => answer({ across: text })} />
      <Field label="Deep" value={deep} usual={usual(USUAL.deep)} onInput={(text) => answer({ deep: text })} />
    </>
  );
}
