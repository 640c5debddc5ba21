import '../first/style.css';
import './style.css';
import type { ComponentType } from 'preact';
import { Lazy } from '../../app/Lazy/index.tsx';
import { surveyTopic } from '../../state/view.ts';
import type { SurveyTopic } from '../../state/view.ts';

const TOPICS: Readonly<Record<SurveyTopic, { readonly name: string; readonly load: () => Promise<ComponentType> }>> = {
  north: { name: 'North', load: () => import('./North.tsx').then((part) => part.North) },
  height: { name: 'A height', load: () => import('./Height.tsx').then((part) => part.Height) },
  picture: { name: 'A picture to trace', load: () => import('./Picture.tsx').then((part) => part.Picture) },
  place: { name: 'The place', load: () => import('./PlaceOfYard.tsx').then((part) => part.PlaceOfYard) },
  climate: { name: 'The climate', load: () => import('./Climate.tsx').then((part) => part.ClimateHelper) },
  lengths: { name: 'Lengths', load: () => import('./Lengths.tsx').then((part) => part.Lengths) },
  marks: { name: 'A shadow that does not fit', load: () => import('../marks/index.tsx').then((part) => part.ShadowMarks) },
};

/** What people do not know of their yard, found with a pole, a tape and a clock. */
export function SurveyCard() {
  const topic = surveyTopic.value;
  const { name, load } = TOPICS[topic];
  return (
    <div class="survey-card">
      <nav aria-label="What to find out" class="survey-topics">
        {(Object.keys(TOPICS) as SurveyTopic[]).map((key) => (
          <button key={key} type="button" aria-current={key === topic ? 'true' : undefined} onClick={() => (surveyTopic.value = key)}>{TOPICS[key].name}</button>
        ))}
      </nav>
      <h2>{name}</h2>
      <Lazy load={load} what={name} />
    </div>
  );
}
