using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace EpisodePlanner.Data.Rows.Mapping;

internal sealed class RequestKeyMapping : IEntityTypeConfiguration<RequestKeyRow>
{
    public void Configure(EntityTypeBuilder<RequestKeyRow> builder)
    {
        builder.ToTable("request_keys");
        builder.HasKey(row => new { row.Scope, row.Key });
        builder.HasIndex(row => row.At);
    }
}
