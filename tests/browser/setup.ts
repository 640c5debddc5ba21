/** Starts nothing yet: the browser tests bring the one shared Chromium here. */
export default function setup(): void {}
