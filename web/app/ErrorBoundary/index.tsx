import { Component } from 'preact';
import type { ComponentChildren } from 'preact';
import { saveFile } from '../../state/files.ts';
import './style.css';

interface Props {
  /** Which part of the page this guards: "The drawing". */
  readonly what: string;
  readonly children: ComponentChildren;
}

/** When a part of the page fails, says so in its place and keeps the yard within reach; the rest goes on. */
export class ErrorBoundary extends Component<Props, { message: string | null }> {
  override state = { message: null };

  override componentDidCatch(error: unknown): void {
    this.setState({ message: error instanceof Error ? error.message : String(error) });
  }

  override render() {
    if (this.state.message === null) return this.props.children;
    return (
      <section class="broken-part" role="alert">
        <p>{this.props.what} stopped working. Your yard is still here.</p>
        <p class="broken-part-detail">{this.state.message}</p>
        <button type="button" onClick={saveFile}>
          Save a file
        </button>
        <button type="button" onClick={() => this.setState({ message: null })}>
          Try again
        </button>
      </section>
    );
  }
}
