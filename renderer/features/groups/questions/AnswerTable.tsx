import type { QuestionTable } from '../../../../core/questions/index.ts';
import { Fraction } from '../../../design/index.ts';

/** A table of an answer: figures right, the row that answers in weight. */
export function AnswerTable({ table }: { table: QuestionTable }) {
  return (
    <table className="table answer-table">
      <thead>
        <tr>
          {table.head.map((text, i) =>
            text === '' ? (
              <td key={i} />
            ) : (
              <th key={i} scope="col">
                {text}
              </th>
            ),
          )}
        </tr>
      </thead>
      <tbody>
        {table.rows.map(({ cells: [name = '', ...cells], answer }, i) => (
          <tr key={i} className={answer ? 'answer' : undefined}>
            <th scope="row">{name}</th>
            {cells.map((cell, j) => (
              <td key={j}>
                <Fraction>{cell}</Fraction>
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
