/** A program that uses the library as modules. */
module io.github.seamstead.consumer {
  requires io.github.seamstead.api;
}
