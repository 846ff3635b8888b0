import { ROLES, type Role } from "#lib/domain/words";

/** Which role the ribbon, the gaps and the strips show. */
export const RoleTabs = ({ role }: { role: Role }) => (
  <ul className="tabs role-tabs" aria-label="Role shown">
    {ROLES.map((name) => (
      <li key={name}>
        <a
          href={name === "focal" ? "/#weeks" : `/?role=${name}#weeks`}
          aria-current={name === role ? "true" : undefined}
        >
          {name}
        </a>
      </li>
    ))}
  </ul>
);
