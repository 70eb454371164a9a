import type { HomeAnswer, Report, StoredAnswer } from '$lib/wire';
import type { Reports } from '../place';

const LETTERS: Readonly<Record<Report, string>> = { knew: 'k', 'worked out': 'w', guessed: 'g' };

/**
 * What stands behind the # of the link home: the room's code and the seat's token, which the server
 * knows, and how the answers were come by, which it does not: "AYXW6C-token.2k7g".
 */
export function homeLink({
  code,
  token,
  reports = {}
}: {
  code: string;
  token: string;
  reports?: Reports;
}): string {
  const said = Object.entries(reports).map(([round, report]) => `${round}${LETTERS[report]}`);
  return said.length > 0 ? `${code}-${token}.${said.join('')}` : `${code}-${token}`;
}

/** The part for the server, and the part that it is not told. */
export function readHomeLink(hash: string): { link: string; reports: Reports } {
  const [link, said = ''] = hash.split('.');
  const known = Object.entries(LETTERS) as [Report, string][];
  const reports = [...said.matchAll(/(\d{1,3})([a-z])/g)].flatMap(([, round, letter]) => {
    const report = known.find(([, its]) => its === letter)?.[0];
    return report ? [[round, report] as const] : [];
  });
  return { link, reports: Object.fromEntries(reports) };
}

/** An answer of a clinic in its owner's record: the same one, wherever it comes to. */
export function answerForRecord(code: string, made: HomeAnswer, report: Report): StoredAnswer {
  const { round, ...answer } = made;
  return { ...answer, id: `clinic-${code}-${round}`, report };
}
