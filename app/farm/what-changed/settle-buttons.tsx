import { Form } from "../../ui/form.client";
import { keepFigures, takeFigures } from "./figure-actions";

type Props = {
  /** The id of a crop, the recipes, or all of it. */
  of: number | "recipes" | "all";
  /** What the buttons call it. */
  name: string;
  isMain?: boolean;
};

/** Take or keep: of one crop, of the recipes, or all of it. */
export const SettleButtons = ({ of, name, isMain = false }: Props) => (
  <div className="row">
    <Form
      action={takeFigures}
      submit={of === "all" ? "Take all the new figures" : "Take the new figures"}
      label={`Take the new figures of ${name}`}
      hidden={{ of }}
      isQuiet={!isMain}
    />
    <Form
      action={keepFigures}
      submit={of === "all" ? "Keep all of mine" : "Keep mine"}
      label={`Keep my figures of ${name}`}
      hidden={{ of }}
      isQuiet
    />
  </div>
);
