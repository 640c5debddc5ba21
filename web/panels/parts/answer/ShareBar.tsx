import './style.css';

/** So much less of today's heat damage as a bar, all of it the frame. The words beside it say the same. */
export function ShareBar({ spared }: { /** 0 to 1; less is drawn empty. */ readonly spared: number }) {
  return (
    <span class="share-bar" aria-hidden="true">
      <span style={{ width: `${Math.max(0, Math.min(1, spared)) * 100}%` }} />
    </span>
  );
}
