import { AimButton } from './AimButton.tsx';
import { Field } from './boxes/Field.tsx';

interface Props {
  readonly label: string;
  readonly value: string;
  readonly usual: string;
  readonly hint?: string;
  /** What is asked for of how the phone is held, and what its button says. */
  readonly angle: 'bearing' | 'altitude';
  readonly aim: string;
  readonly onInput: (text: string) => void;
}

/** An angle in degrees, typed or read off the phone held along it. */
export function AimedField({ label, value, usual, hint, angle, aim, onInput }: Props) {
  return (
    <>
      <Field label={label} value={value} usual={usual} hint={hint} onInput={onInput} />
      <AimButton label={aim} needs={angle} onAim={(held) => onInput(`${Math.round(held[angle] ?? 0)}°`)} />
    </>
  );
}
