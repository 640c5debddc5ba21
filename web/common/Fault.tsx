import type { ComponentChildren } from 'preact';

/** Why something cannot be taken, spoken at once; nothing while there is nothing to say. */
export function Fault({ id, children }: { readonly id?: string; readonly children: ComponentChildren }) {
  return children ? (
    <p id={id} class="box-said fault" role="alert">
      {children}
    </p>
  ) : null;
}
