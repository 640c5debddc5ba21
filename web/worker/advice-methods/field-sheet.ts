import { blanksOf, fieldSheet, withAnswers } from '../../../engine/index.ts';
import type { Answered, Answers, Blank, CivilDate, FieldSheet, Outcome, Plan } from '../../../engine/index.ts';

/** The sheet to take into the yard. @param dates The days of its shadow tables. */
export function sheet({
  plan,
  dates,
}: {
  readonly plan: Plan;
  readonly dates: readonly CivilDate[];
}): Outcome<FieldSheet> {
  return { ok: true, value: fieldSheet(plan, dates) };
}

export interface SheetAnswered extends Answered {
  /** What is open still, numbered anew. */
  readonly left: readonly Blank[];
}

/** The plan with what was written on the sheet. @param date The day of its shadows. */
export function answerSheet({
  plan,
  answers,
  date,
}: {
  readonly plan: Plan;
  readonly answers: Answers;
  readonly date: CivilDate;
}): Outcome<SheetAnswered> {
  const answered = withAnswers(plan, answers, date);
  return { ok: true, value: { ...answered, left: blanksOf(answered.plan) } };
}
