package io.github.seamstead.geometry.templates;

import java.util.List;

/**
 * The best assignment of faces to at most k templates.
 *
 * @param templates k templates, or fewer where one more does not help
 * @param worstMisfit the greatest fullness of any measure of any face, in metres
 * @param lowerBound no k templates have a smaller worst misfit than this, in metres
 * @param faces per face
 * @param seams per seam
 * @param hem per base corner
 */
public record TemplateSet(
    List<Template> templates,
    double worstMisfit,
    double lowerBound,
    List<FaceFit> faces,
    List<SeamFit> seams,
    List<HemTakeUp> hem) {

  public TemplateSet {
    templates = List.copyOf(templates);
    faces = List.copyOf(faces);
    seams = List.copyOf(seams);
    hem = List.copyOf(hem);
  }

  /** The same templates as an answer for more of them, with the bound that then holds. */
  TemplateSet boundedBy(double bound) {
    return new TemplateSet(templates, worstMisfit, bound, faces, seams, hem);
  }

  /**
   * Tells whether no better assignment exists.
   *
   * @return true if the worst misfit meets its lower bound; always so up to 24 triangular faces,
   *     and with an opening where no template had to be lengthened for its other diagonal
   */
  public boolean isProvenBest() {
    return worstMisfit <= lowerBound;
  }

  /**
   * Gives the gap to the lower bound.
   *
   * @return in metres, 0 or more
   */
  public double gap() {
    return Math.max(0, worstMisfit - lowerBound);
  }
}
