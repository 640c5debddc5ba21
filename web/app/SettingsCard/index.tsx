import { commitEdit } from '../../state/edit.ts';
import { changeSettings, settings } from '../../state/settings.ts';
import { plan, units } from '../../state/yard.ts';
import { KEYS } from '../keys.ts';
import './style.css';

const CLOCKS = [
  ['24', '17:30'],
  ['12', '5:30 pm'],
] as const;

/** How the page looks and measures. */
export function SettingsCard() {
  const { theme, text, clock } = settings.value;
  return (
    <>
      <Choice
        legend="Light"
        chosen={theme}
        options={[
          ['auto', 'As the system is'],
          ['light', 'Light'],
          ['dark', 'Dark'],
          ['bright', 'Bright sun: black on white, bigger'],
        ]}
        onChange={(next) => changeSettings({ theme: next })}
      />
      <Choice
        legend="Letters"
        chosen={text}
        options={[
          ['normal', 'Normal'],
          ['bigger', 'Bigger'],
        ]}
        onChange={(next) => changeSettings({ text: next })}
      />
      {units.value === 'metric' && (
        <Choice legend="Clock" chosen={clock} options={CLOCKS} onChange={(next) => changeSettings({ clock: next })} />
      )}
      <Choice
        legend="Units of this yard"
        chosen={units.value}
        options={[
          ['metric', 'Metres, °C'],
          ['imperial', 'Feet and inches, °F'],
        ]}
        onChange={(next) =>
          commitEdit(next === 'metric' ? 'Show metres' : 'Show feet and inches', { ...plan.value, units: next })
        }
      />
      <h2>Keys</h2>
      <dl class="settings-keys">
        {KEYS.map(({ keys, does }) => [
          <dt key={keys}>
            <kbd>{keys}</kbd>
          </dt>,
          <dd key={does}>{does}</dd>,
        ])}
      </dl>
      <button type="button" onClick={() => print()}>
        Print this stage
      </button>
    </>
  );
}

interface ChoiceProps<T extends string> {
  readonly legend: string;
  readonly chosen: T;
  readonly options: readonly (readonly [value: T, words: string])[];
  readonly onChange: (value: T) => void;
}

function Choice<T extends string>({ legend, chosen, options, onChange }: ChoiceProps<T>) {
  return (
    <fieldset>
      <legend>{legend}</legend>
      {options.map(([value, words]) => (
        <label key={value} class="settings-option">
          <input type="radio" name={legend} checked={chosen === value} onChange={() => onChange(value)} />
          {words}
        </label>
      ))}
    </fieldset>
  );
}
