/** What a drawing or chart shows of itself: the demo of the reference, and what its snapshot test holds. */
export interface Example<Data, Options> {
  readonly title: string;
  readonly data: Data;
  readonly options: Options;
}
