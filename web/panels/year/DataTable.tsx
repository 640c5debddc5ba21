interface Props {
  readonly head: readonly string[];
  /** What a row is of comes first. */
  readonly rows: readonly (readonly string[])[];
}

/** A table that can be scrolled sideways where the slip is narrow. */
export function DataTable({ head, rows }: Props) {
  return (
    <div class="sheet-table" tabIndex={0} role="group" aria-label={head.join(', ')}>
      <table>
        <thead>
          <tr>
            {head.map((text) => (
              <th key={text} scope="col">
                {text}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(([name, ...cells]) => (
            <tr key={name}>
              <th scope="row">
                <bdi>{name}</bdi>
              </th>
              {cells.map((text, column) => (
                <td key={column}>{tied(text)}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** Ties each number to the unit after it, for columns so narrow that they would part. */
function tied(text: string): string {
  return text.replaceAll(/(\d) (?=\S)/g, '$1\u00a0');
}
