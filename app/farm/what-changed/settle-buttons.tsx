import { Form } from "../../ui/form.client";
import { keepFigures, takeFigures } from "./figure-actions";

type Props = {
  /** The id of the crop, or all of them. */
  crop: number | "all";
  /** What the buttons call it. */
  name: string;
  isMain?: boolean;
};

/** Take or keep: of one crop, or of all. */
export const SettleButtons = ({ crop, name, isMain = false }: Props) => (
  <div className="row">
    <Form
      action={takeFigures}
      submit={crop === "all" ? "Take all the new figures" : "Take the new figures"}
      label={`Take the new figures of ${name}`}
      hidden={{ crop }}
      isQuiet={!isMain}
    />
    <Form
      action={keepFigures}
      submit={crop === "all" ? "Keep all of mine" : "Keep mine"}
      label={`Keep my figures of ${name}`}
      hidden={{ crop }}
      isQuiet
    />
  </div>
);
