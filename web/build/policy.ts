import { createHash } from 'node:crypto';

/**
 * The content security policy of the page, as a meta tag of the built page. Nothing may leave the origin. The worker is
 * a blob made by the page, so that it stands under this policy too; one loaded from an address would not. The page asks
 * for a blob of each worker's to learn whether that worker lives.
 */
export const SERVED_POLICY = policy({
  script: "'self'",
  worker: "'self' blob:",
  style: "'self'",
  connect: "'self' blob:",
  manifest: "'self'",
});

/** The same for the page that is one file: it may reach nothing at all, and runs only what it was built with. */
export function singleFilePolicy(scripts: readonly string[], styles: readonly string[]): string {
  return policy({
    script: scripts.map(hashOf).join(' '),
    worker: 'blob:',
    style: styles.map(hashOf).join(' '),
    connect: 'blob:',
    manifest: "'none'",
  });
}

function policy(sources: { script: string; worker: string; style: string; connect: string; manifest: string }): string {
  return [
    "default-src 'none'",
    `script-src ${sources.script}`,
    `worker-src ${sources.worker}`,
    `style-src ${sources.style}`,
    "img-src 'self' data: blob:",
    `connect-src ${sources.connect}`,
    `manifest-src ${sources.manifest}`,
    "form-action 'none'",
    "base-uri 'none'",
  ].join('; ');
}

function hashOf(text: string): string {
  return `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
}
