import '../parts/boxes/asked.css';
import './style.css';
import type { ComponentType } from 'preact';
import { cautionsFor } from '../../../engine/index.ts';
import { surveyTopic } from '../../state/view.ts';
import type { SurveyTopic } from '../../state/view.ts';
import { plan } from '../../state/yard.ts';
import { ClimateHelper } from './Climate.tsx';
import { Height } from './Height.tsx';
import { Lengths } from './Lengths.tsx';
import { ShadowMarks } from './marks/index.tsx';
import { North } from './North.tsx';
import { Picture } from './picture/index.tsx';
import { PlaceOfYard } from './PlaceOfYard.tsx';
import { Skyline } from './Skyline.tsx';

const TOPICS: Readonly<Record<SurveyTopic, { readonly name: string; readonly Topic: ComponentType }>> = {
  north: { name: 'North', Topic: North },
  height: { name: 'A height', Topic: Height },
  skyline: { name: 'The skyline', Topic: Skyline },
  picture: { name: 'A picture to trace', Topic: Picture },
  place: { name: 'The place', Topic: PlaceOfYard },
  climate: { name: 'The climate', Topic: ClimateHelper },
  lengths: { name: 'Lengths', Topic: Lengths },
  marks: { name: 'A shadow that does not fit', Topic: ShadowMarks },
};

/** Found in the yard, not at the table. */
const OUTSIDE: readonly SurveyTopic[] = ['north', 'height', 'skyline', 'lengths', 'marks'];

/** What people do not know of their yard, found with a pole, a tape and a clock. */
export function SurveyCard() {
  const topic = surveyTopic.value;
  const { name, Topic } = TOPICS[topic];
  return (
    <div class="survey-card">
      <nav aria-label="What to find out" class="survey-topics">
        {(Object.keys(TOPICS) as SurveyTopic[]).map((key) => (
          <button
            key={key}
            type="button"
            aria-current={key === topic ? 'true' : undefined}
            onClick={() => (surveyTopic.value = key)}
          >
            {TOPICS[key].name}
          </button>
        ))}
      </nav>
      <h2>{name}</h2>
      <Topic />
      {OUTSIDE.includes(topic) && (
        <details>
          <summary>Before you go out in the heat</summary>
          {cautionsFor(['heat'], plan.value).map(({ id, text }) => (
            <p key={id}>{text}</p>
          ))}
        </details>
      )}
    </div>
  );
}
