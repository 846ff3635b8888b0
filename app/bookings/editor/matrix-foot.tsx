import { ROLES, type Role } from "#lib/domain/words";
import { inWholes } from "#lib/plan/words/numbers";
import type { DraftCoverage } from "./draft-coverage";

type Props = { coverage: DraftCoverage | null; isStale: boolean; spare: string };

/** What the lines need of each job, spare and all, and what of it is short, as the beds stand. It has its room before the first answer comes. */
export function MatrixFoot({ coverage, isStale, spare }: Props) {
  const sum = (role: Role, of: "stems" | "shortStems") =>
    (coverage?.lines ?? []).reduce((total, line) => (line.role === role ? total + line[of] : total), 0);
  return (
    <tfoot data-waits={isStale}>
      <tr>
        <th scope="row">Needed, with {spare.trim() || "0"} % spare</th>
        <td className="count" />
        {ROLES.map((role) => (
          <td key={role} className="stems" data-role={role}>
            <OrQuiet stems={sum(role, "stems")} />
          </td>
        ))}
        <td className="total">
          <OrQuiet stems={coverage?.stems ?? 0} />
        </td>
      </tr>
      <tr>
        <th scope="row">Short</th>
        <td className="count" />
        {ROLES.map((role) => (
          <td key={role} className="stems" data-role={role}>
            <OrQuiet stems={sum(role, "shortStems")} className="short-word" />
          </td>
        ))}
        <td className="total">
          <OrQuiet stems={coverage?.shortStems ?? 0} className="short-word" />
        </td>
      </tr>
    </tfoot>
  );
}

const OrQuiet = ({ stems, className }: { stems: number; className?: string }) =>
  stems > 0 ? <span className={className}>{inWholes(stems)}</span> : <span className="nil">·</span>;
