/** The cautions of the picking itself, once a list. */
export const BucketCare = () => (
  <p className="small">
    Fill buckets half with water and carry fewer: a full one of 5 gallons weighs about 42 lb (19 kg, from memory).
    Gloves for sap; wash before eating. A sprayed bed is not on this list before its label allows; the label and local
    rules govern.
  </p>
);
