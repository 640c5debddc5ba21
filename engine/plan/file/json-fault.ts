/** Where a text stops being JSON (RFC 8259). Engines word their own errors differently, and some give no place. */
const TOKEN =
  /[ \t\n\r]*(?:([{}[\],:])|(")|(-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?(?![\w.])|(?:true|false|null)(?!\w)))/y;
/** What may follow a backslash. */
const ESCAPE = /["\\/bfnrt]|u[0-9a-fA-F]{4}/y;

type Expected = 'value' | 'value or ]' | 'key' | 'key or }' | 'colon' | 'comma or end' | 'nothing';

const WORDS: Readonly<Record<Expected, string>> = {
  value: 'a value should stand here',
  'value or ]': 'a value or "]" should stand here',
  key: 'a key in double quotes should stand here',
  'key or }': 'a key in double quotes or "}" should stand here',
  colon: 'a ":" should stand here',
  'comma or end': 'a "," or a closing bracket should stand here',
  nothing: 'the file should end here',
};

/** The first character that cannot stand where it does, and what should; `null` when the text is JSON. */
export function firstFault(text: string): { offset: number; what: string } | null {
  const open: string[] = [];
  let expected: Expected = 'value';
  let at = 0;
  for (;;) {
    TOKEN.lastIndex = at;
    const token = TOKEN.exec(text);
    const end = token?.[2] === undefined ? TOKEN.lastIndex : endOfText(text, TOKEN.lastIndex);
    if (token === null || end === null) {
      const offset = at + (/^[ \t\n\r]*/.exec(text.slice(at))?.[0].length ?? 0);
      if (offset >= text.length)
        return expected === 'nothing' ? null : { offset, what: `the file ends, but ${WORDS[expected]}` };
      return { offset, what: WORDS[expected] };
    }
    const next = afterToken(token[1] ?? (token[2] === undefined ? 'value' : 'text'), expected, open);
    if (next === null) return { offset: at + token[0].length - token[0].trimStart().length, what: WORDS[expected] };
    expected = next;
    at = end;
  }
}

/**
 * Where a text ends whose first character stands at an index; `null` if it never does, or holds a bare control
 * character or an escape that is none. Step by step, since a pattern that repeats needs room for every repetition.
 */
function endOfText(text: string, from: number): number | null {
  for (let at = from; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code === 0x22) return at + 1;
    if (code < 0x20) return null;
    if (code !== 0x5c) continue;
    ESCAPE.lastIndex = at + 1;
    if (!ESCAPE.test(text)) return null;
    at = ESCAPE.lastIndex - 1;
  }
  return null;
}

/** What may follow a token; `null` when the token itself may not stand there. Keeps the stack of open brackets. */
function afterToken(token: string, expected: Expected, open: string[]): Expected | null {
  const takesValue = expected === 'value' || expected === 'value or ]';
  const afterValue = (): Expected => (open.length === 0 ? 'nothing' : 'comma or end');
  switch (token) {
    case '{':
    case '[':
      if (!takesValue) return null;
      open.push(token);
      return token === '{' ? 'key or }' : 'value or ]';
    case '}':
      if ((expected !== 'key or }' && expected !== 'comma or end') || open.pop() !== '{') return null;
      return afterValue();
    case ']':
      if ((expected !== 'value or ]' && expected !== 'comma or end') || open.pop() !== '[') return null;
      return afterValue();
    case ',':
      if (expected !== 'comma or end') return null;
      return open[open.length - 1] === '{' ? 'key' : 'value';
    case ':':
      return expected === 'colon' ? 'value' : null;
    case 'text':
      if (expected === 'key' || expected === 'key or }') return 'colon';
      return takesValue ? afterValue() : null;
    default:
      return takesValue ? afterValue() : null;
  }
}
