import { MONTHS } from '../../../../engine/index.ts';
import { Choices } from '../../parts/boxes/Field.tsx';
import { AMOUNT_CHOICES, PART_CHOICES, SIDE_CHOICES } from '../../parts/side-choices.ts';
import { answer, answers } from '../answers.ts';
import { SHEET_WAYS } from '../north-of.ts';

export function DamageQuestion() {
  const { side, part, month, third, amount, northBy, skipped } = answers.value;
  const onSheet = northBy === 'unknown' || skipped.includes('north');
  return (
    <>
      <Choices
        legend={onSheet ? 'Which side, on the sheet?' : 'Which side?'}
        name="side"
        value={side as keyof typeof SIDE_CHOICES}
        choices={onSheet ? { ...SIDE_CHOICES, ...SHEET_WAYS } : SIDE_CHOICES}
        class="choices-rose"
        onChange={(next) => answer({ side: next })}
      />
      <Choices
        legend="Which part?"
        name="part"
        value={part as keyof typeof PART_CHOICES}
        choices={PART_CHOICES}
        onChange={(next) => answer({ part: next })}
      />
      <p class="asked-field">
        <label for="first-month">Month</label>
        <select
          id="first-month"
          value={month}
          onChange={(event) => answer({ month: Number(event.currentTarget.value) })}
        >
          {MONTHS.map((name, index) => (
            <option key={name} value={index + 1}>
              {name}
            </option>
          ))}
        </select>
      </p>
      <Choices
        legend="When in it?"
        name="third"
        value={third}
        choices={{ early: 'early', mid: 'in the middle', late: 'late' }}
        onChange={(next) => answer({ third: next })}
      />
      <Choices
        legend="How bad?"
        name="amount"
        value={String(amount) as keyof typeof AMOUNT_CHOICES}
        choices={AMOUNT_CHOICES}
        onChange={(next) => answer({ amount: Number(next) })}
      />
    </>
  );
}
