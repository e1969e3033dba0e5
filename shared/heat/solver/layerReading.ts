/** A layer's figures at one moment. */
export interface LayerReading {
  /** Since the start of the run [s] */
  readonly time: number;
  /** [°C] */
  readonly mean: number;
  /** Of its upper face: the free surface, or the joint with the layer above [°C] */
  readonly surface: number;
}
