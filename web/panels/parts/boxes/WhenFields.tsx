import { useId } from 'preact/hooks';
import { plan } from '../../../state/yard.ts';
import { siteNow } from '../typed.ts';

export interface When {
  /** "YYYY-MM-DD" */
  readonly date: string;
  /** "HH:MM", or empty. */
  readonly time: string;
}

interface Props {
  readonly value: When;
  readonly onChange: (value: When) => void;
}

/** The minute of a look at a shadow, by the clocks of the yard. */
export function WhenFields({ value, onChange }: Props) {
  const id = useId();
  return (
    <div class="when-fields">
      <p class="asked-field">
        <label for={`${id}-date`}>Date of the shadow</label>
        <input
          id={`${id}-date`}
          type="date"
          value={value.date}
          onInput={(event) => onChange({ ...value, date: event.currentTarget.value })}
        />
      </p>
      <p class="asked-field">
        <label for={`${id}-time`}>Time by the clock</label>
        <input
          id={`${id}-time`}
          type="time"
          value={value.time}
          aria-describedby={`${id}-zone`}
          onInput={(event) => onChange({ ...value, time: event.currentTarget.value })}
        />
      </p>
      <button type="button" onClick={() => onChange(siteNow())}>
        Now
      </button>
      <p id={`${id}-zone`} class="quiet">
        Clocks of {plan.value.site.timeZone}.
      </p>
    </div>
  );
}
