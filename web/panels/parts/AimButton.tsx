import { useState } from 'preact/hooks';
import { type Aim, aimOfPhone, canAim } from '../../common/phone-aim.ts';

interface Props {
  readonly label: string;
  /** Where a bearing is needed, a phone without a compass does not do. */
  readonly needs: 'bearing' | 'altitude';
  readonly onAim: (aim: Aim) => void;
}

/** Reads once how the phone is held; nothing where a browser cannot know. */
export function AimButton({ label, needs, onAim }: Props) {
  const [silent, setSilent] = useState(false);
  if (!canAim()) return null;
  const read = async (): Promise<void> => {
    const aim = await aimOfPhone();
    const told = aim !== null && (needs === 'altitude' || aim.bearing !== null);
    setSilent(!told);
    if (told) onAim(aim);
  };
  return (
    <>
      <button type="button" onClick={() => void read()}>
        {label}
      </button>
      {silent && (
        <p class="box-said" role="status">
          {needs === 'bearing' ? 'No compass answers here' : 'This device does not say how it is held'}: type it
          instead.
        </p>
      )}
    </>
  );
}
