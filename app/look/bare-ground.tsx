/** A string over bare ground: the picture of every place where nothing stands yet. */
export const BareGround = () => (
  <svg className="bare-ground" viewBox="0 0 600 90" aria-hidden="true">
    <path className="bare-soil" d="M0 70H600V90H0z" />
    <path className="bare-stake" d="M24 22V78M576 22V78" />
    <path className="bare-string" d="M24 30Q300 40 576 30" />
  </svg>
);
