import { shownOptions } from '../../state/view.ts';
import { plan } from '../../state/yard.ts';
import { putFirstCloth } from '../parts/option-edits.ts';
import { openTheOption, optionWords } from '../parts/tried.ts';

/** What is on the drawing: the yard as it is, or with one option built; and how a new one begins. */
export function OptionTabs() {
  const options = plan.value.options ?? [];
  const open = shownOptions.value[0] ?? null;
  return (
    <section class="option-tabs" aria-label="What is tried">
      <h2 class="unseen">What is tried</h2>
      <div class="tab-row" role="group" aria-label="Show on the drawing">
        <button type="button" aria-pressed={open === null} onClick={() => openTheOption(null)}>
          Today
        </button>
        {options.map((option) => (
          <button
            key={option.id}
            type="button"
            aria-pressed={open === option.id}
            onClick={() => openTheOption(option.id)}
          >
            <span title={optionWords(option)}>{option.id}</span>
          </button>
        ))}
      </div>
      <p class="put-row">
        {open === null ? 'New:' : `Put into option ${open}:`}{' '}
        <button type="button" onClick={() => putFirstCloth('canopy')}>
          A roof
        </button>{' '}
        <button type="button" onClick={() => putFirstCloth('screen')}>
          A screen
        </button>
      </p>
    </section>
  );
}
