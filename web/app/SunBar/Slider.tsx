import type { ComponentChildren, TargetedPointerEvent } from 'preact';
import { useWidth } from '../use-width.ts';

interface Props {
  readonly class: string;
  readonly label: string;
  /** 0 to `max`, whole. */
  readonly value: number;
  readonly max: number;
  readonly step: number;
  /** What the value means, read out. */
  readonly words: string;
  readonly onChange: (value: number) => void;
  /** The picture, drawn to the width given. */
  readonly children: (width: number) => ComponentChildren;
}

/** A picture with a bead that can be dragged, tapped to, and moved by the keys of an ordinary range. */
export function Slider({ class: name, label, value, max, step, words, onChange, children }: Props) {
  const [ref, width] = useWidth<HTMLDivElement>();
  const take = (event: TargetedPointerEvent<HTMLDivElement>): void => {
    const box = event.currentTarget.getBoundingClientRect();
    const share = Math.min(1, Math.max(0, (event.clientX - box.left) / box.width));
    onChange(Math.round((share * max) / step) * step);
  };
  return (
    <div
      ref={ref}
      class={`slider ${name}`}
      onPointerDown={(event) => {
        if (event.button !== 0) return;
        event.currentTarget.setPointerCapture(event.pointerId);
        event.currentTarget.querySelector('input')?.focus({ preventScroll: true });
        event.preventDefault();
        take(event);
      }}
      onPointerMove={(event) => event.currentTarget.hasPointerCapture(event.pointerId) && take(event)}
    >
      <input
        type="range"
        min={0}
        max={max}
        step={step}
        value={value}
        aria-label={label}
        aria-valuetext={words}
        onInput={(event) => onChange(event.currentTarget.valueAsNumber)}
      />
      {width > 0 && children(width)}
    </div>
  );
}
