import type { ReactNode } from "react";
import { mayOpen } from "./allowed";
import { roleNow } from "./who";

type Props = { readonly href: string; readonly className?: string; readonly children: ReactNode };

/** A link for those who may open its page; for others its words alone. */
export const LinkIfTheirs = ({ href, className, children }: Props) =>
  mayOpen(roleNow(), href) ? (
    <a href={href} className={className}>
      {children}
    </a>
  ) : (
    <span className={className}>{children}</span>
  );
