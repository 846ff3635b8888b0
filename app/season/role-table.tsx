import type { WeekRole } from "#lib/plan/road/weeks";
import { inWholes } from "../ui/numbers";

/** One week by role. Roles that nobody asks for and nothing gives are left out. */
export const RoleTable = ({ roles }: { roles: readonly WeekRole[] }) => (
  <table>
    <caption>By role, stems</caption>
    <thead>
      <tr>
        <th scope="col">Role</th>
        <th scope="col" className="number">
          Needed
        </th>
        <th scope="col" className="number">
          Covered
        </th>
        <th scope="col" className="number">
          Short
        </th>
        <th scope="col" className="number">
          Within reach
        </th>
      </tr>
    </thead>
    <tbody>
      {roles
        .filter((row) => row.needStems + row.reachableStems > 0)
        .map((row) => (
          <tr key={row.role} className={row.shortStems > 0 ? "short-row" : undefined}>
            <th scope="row">{row.role}</th>
            <td className="number">{inWholes(row.needStems)}</td>
            <td className="number">{inWholes(row.coveredStems)}</td>
            <td className="number">
              {row.shortStems > 0 ? <strong className="short-word">{inWholes(row.shortStems)}</strong> : "0"}
            </td>
            <td className="number">{inWholes(row.reachableStems)}</td>
          </tr>
        ))}
    </tbody>
  </table>
);
