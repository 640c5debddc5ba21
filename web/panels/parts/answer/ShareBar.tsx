import './style.css';

/** So much of today's as a bar: what is left filled, all of today's its frame. The words beside it say the same. */
export function ShareBar({ left }: { /** 0 to 1; more is drawn full. */ readonly left: number }) {
  return (
    <span class="share-bar" aria-hidden="true">
      <span style={{ width: `${Math.max(0, Math.min(1, left)) * 100}%` }} />
    </span>
  );
}
