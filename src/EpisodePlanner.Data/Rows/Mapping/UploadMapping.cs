using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace EpisodePlanner.Data.Rows.Mapping;

internal sealed class UploadMapping : IEntityTypeConfiguration<UploadRow>
{
    public void Configure(EntityTypeBuilder<UploadRow> builder)
    {
        AggregateMapping.Share(builder, "uploads");
        builder.HasKey(row => new { row.Workshop, row.Id });
    }
}
